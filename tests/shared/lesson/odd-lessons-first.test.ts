import { expect, test } from 'vitest';
import { readOddLessons } from './read-odd-lessons.ts';

/** About ninety seconds on a quiet machine; a busy one took three minutes. What a lesson may take is told by the processor. */
const PATIENCE_MS = 600_000;

test(
  'the first ten thousand odd lessons: a plan or problems with a place and a mend, each within 100 ms',
  () => {
    const { faults, slowestMs } = readOddLessons(0, 10_000);
    console.log(`the slowest of the first ten thousand odd lessons took ${Math.round(slowestMs)} ms`);
    expect(faults).toEqual([]);
    expect(({} as { polluted?: unknown }).polluted).toBeUndefined();
  },
  PATIENCE_MS,
);
