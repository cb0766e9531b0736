/** Why something could not be kept: no room, or the browser keeps nothing (a private window, a locked-down device). */
export type KeepFault = 'full' | 'refused';

/** What a browser means by the error it throws. */
export const faultOf = (error: unknown): KeepFault =>
  error instanceof DOMException && error.name === 'QuotaExceededError' ? 'full' : 'refused';
