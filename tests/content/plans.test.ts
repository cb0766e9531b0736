import { expect, test } from 'vitest';
import { compileLesson } from '../../shared/compile/index.ts';
import { demoLessons, demoLibrary } from '../demo.ts';
import { golden } from './changed.ts';

/** Nine digits: noise in the last ones must not train anybody to take a change over unread. */
const rounded = (_: string, value: unknown): unknown => (typeof value === 'number' ? Number(value.toPrecision(9)) : value);

// Golden plans are unchanged, not known to be right: what is right is in tests/reference and the laws.
test.each(demoLessons)('the plan of $id is what it was', ({ id, file, text }) => {
  const { plan } = compileLesson(file, text, demoLibrary, id);
  expect(plan).not.toBeNull();
  const now = `${JSON.stringify(plan, rounded, 2)}\n`;
  expect(golden(`${id}.plan.json`, now)).toBe(now);
});
