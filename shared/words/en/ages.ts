import type { Band } from '../../library/bands.ts';

/** An age band as people say it: "ages 7 to 9", or "ages 7 to 11" for bands that join. */
export function agesOf(bands: readonly Band[]): string {
  const ends = bands.map((band) => band.split('-').map(Number));
  const from = Math.min(...ends.map(([low]) => low ?? 0));
  const to = Math.max(...ends.map(([, high]) => high ?? 0));
  return `ages ${from}–${to}`;
}
