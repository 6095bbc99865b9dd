import { type PointerEvent, type RefObject, useEffect, useRef } from 'react';

/** How long a finger rests on a bed until it holds it, ms: one that moves on before that scrolls the page. */
const restMs = 250;
/** A finger that rests moves no more than this, pixels. */
const restPx = 8;

/** Taking hold of something on the drawing, and the page that must not scroll meanwhile. */
export interface Holding {
  /** Takes hold: at once by a mouse or a pen, by a finger once it has rested. */
  begin(event: PointerEvent, take: () => void): void;
  moved(event: PointerEvent): void;
  end(): void;
}

interface Waiting {
  readonly timer: ReturnType<typeof setTimeout>;
  readonly x: number;
  readonly y: number;
}

/** A finger that holds a bed draws the bed and not the page; browsers do not heed `touch-action` within a drawing. */
export function useHolding(svg: RefObject<SVGSVGElement | null>): Holding {
  const waiting = useRef<Waiting>(undefined);
  const isHeld = useRef(false);
  useEffect(() => {
    const overlay = svg.current;
    const keepPage = (event: TouchEvent): void => {
      if (isHeld.current && event.cancelable) event.preventDefault();
    };
    overlay?.addEventListener('touchmove', keepPage, { passive: false });
    return () => {
      clearTimeout(waiting.current?.timer);
      overlay?.removeEventListener('touchmove', keepPage);
    };
  }, [svg]);
  const end = (): void => {
    clearTimeout(waiting.current?.timer);
    waiting.current = undefined;
    isHeld.current = false;
  };
  return {
    begin: ({ pointerType, pointerId, clientX: x, clientY: y }, take) => {
      end();
      const hold = (): void => {
        waiting.current = undefined;
        isHeld.current = true;
        svg.current?.setPointerCapture(pointerId);
        take();
      };
      if (pointerType === 'touch') waiting.current = { timer: setTimeout(hold, restMs), x, y };
      else hold();
    },
    moved: ({ clientX, clientY }) => {
      const from = waiting.current;
      if (from !== undefined && Math.hypot(clientX - from.x, clientY - from.y) > restPx) end();
    },
    end,
  };
}
