import type * as z from 'zod/mini';

const VERSION = 1;
const keyOf = (lesson: string, activity: string): string => `pitlore/${VERSION}/${lesson}/${activity}`;

/** Whether this device keeps what is stored; false in some private windows and where the disk is full. */
export type Kept = boolean;

/**
 * Keeps the state of one activity on this device. No name, no network.
 *
 * @returns false where the device would not keep it.
 */
export function keep(lesson: string, activity: string, state: unknown): Kept {
  try {
    localStorage.setItem(keyOf(lesson, activity), JSON.stringify(state));
    return true;
  } catch {
    return false;
  }
}

/**
 * What was kept of one activity, if it still fits. What does not fit (an older version, another lesson under the same
 * name) is set aside under another key, not thrown away.
 */
export function recall<State>(lesson: string, activity: string, schema: z.ZodMiniType<State>): State | null {
  const key = keyOf(lesson, activity);
  let text: string | null = null;
  try {
    text = localStorage.getItem(key);
    if (text === null) return null;
    return schema.parse(JSON.parse(text));
  } catch {
    if (text !== null) setAside(key, text);
    return null;
  }
}

/** True where something is kept under this name, whether it can be read or not. */
export function isTaken(lesson: string, activity: string): boolean {
  try {
    return localStorage.getItem(keyOf(lesson, activity)) !== null;
  } catch {
    return false;
  }
}

function setAside(key: string, text: string): void {
  try {
    localStorage.setItem(`${key}/set-aside`, text);
    localStorage.removeItem(key);
  } catch {
    // The device keeps nothing; there is nothing to lose.
  }
}

/** Takes the state of one activity off this device. */
export function forget(lesson: string, activity: string): void {
  try {
    localStorage.removeItem(keyOf(lesson, activity));
  } catch {
    // The device keeps nothing; there is nothing to take away.
  }
}
