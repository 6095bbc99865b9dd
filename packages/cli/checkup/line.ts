/** One thing that was looked at: in order; to be looked at some day; or in need of a cure now. */
export interface CheckupLine {
  readonly subject: string;
  readonly state: 'ok' | 'look' | 'fault';
  readonly says: string;
  /** What to do about it; absent where all is in order. */
  readonly cure?: string;
}

export const ok = (subject: string, says: string): CheckupLine => ({ subject, state: 'ok', says });

export const look = (subject: string, says: string, cure: string): CheckupLine => ({
  subject,
  state: 'look',
  says,
  cure,
});

export const fault = (subject: string, says: string, cure: string): CheckupLine => ({
  subject,
  state: 'fault',
  says,
  cure,
});
