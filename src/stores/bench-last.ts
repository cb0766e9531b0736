const KEY = 'pitlore/bench/last';

/** Notes which visit this tab has on its bench, so that coming back to the page finds it there. */
export function noteOnBench(id: string): void {
  try {
    sessionStorage.setItem(KEY, id);
  } catch {
    // Nothing is kept here: the visit last changed is taken.
  }
}

/** The visit this tab had on its bench; null where it had none. */
export function lastOnBench(): string | null {
  try {
    return sessionStorage.getItem(KEY);
  } catch {
    return null;
  }
}
