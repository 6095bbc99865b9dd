/**
 * Runs one task at a time, and of all that were asked for meanwhile the newest alone: figures that follow a hand are
 * of where the hand is, not of where it was.
 */
export const newestOnly = <Asked, Result>(
  work: (asked: Asked) => Promise<Result>,
  show: (result: Result, asked: Asked) => void,
): ((asked: Asked) => void) => {
  let waiting: { readonly asked: Asked } | undefined;
  let works = false;
  const run = async (): Promise<void> => {
    works = true;
    try {
      while (waiting !== undefined) {
        const { asked } = waiting;
        waiting = undefined;
        const result = await work(asked);
        show(result, asked);
      }
    } finally {
      works = false;
    }
  };
  return (asked) => {
    waiting = { asked };
    if (!works) void run();
  };
};
