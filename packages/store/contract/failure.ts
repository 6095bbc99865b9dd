/** Why records could not be read or written, where the input is not at fault. */
export type StoreFailureCode =
  | 'disk-full'
  | 'read-only'
  | 'no-access'
  | 'damaged'
  | 'busy'
  | 'newer-edition'
  | 'not-a-database'
  | 'shared-journal'
  | 'input-output';

/**
 * The records cannot be used at the moment, or not by this version. Nothing was written: what was acknowledged
 * before stays as it was.
 */
export class StoreFailure extends Error {
  readonly code: StoreFailureCode;
  /** What the person can do about it, one sentence; empty where nothing is known. */
  readonly advice: string;

  constructor(code: StoreFailureCode, says: string, advice = '') {
    super(says);
    this.name = 'StoreFailure';
    this.code = code;
    this.advice = advice;
  }
}
