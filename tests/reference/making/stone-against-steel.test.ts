import { expect, test } from 'vitest';
import { off, reckon } from './model.ts';

test.each([
  { name: 'Townsend 1969, in Hardy & Sillitoe 2003 (RF)', ratio: 4.4 },
  { name: 'Salisbury 1962, in Hardy & Sillitoe 2003 (RF), 3.5 standing for 3 to 4', ratio: 3.5 },
  { name: 'Godelier & Garanger 1973, in Hardy & Sillitoe 2003 (RF)', ratio: 2.5 },
  { name: 'Saraydar & Shimada 1971 (RF), 6 standing for over 6', ratio: 6 },
])('$name: stone takes $ratio times as long as steel, inside 5 to 95 per cent', ({ ratio }) => {
  const reckoned = reckon('stone-against-steel', {});
  expect(reckoned.low).toBeLessThan(ratio);
  expect(reckoned.high).toBeGreaterThan(ratio);
  expect(off(reckoned.low, 1.91)).toBeLessThan(0.01);
  expect(off(reckoned.middle, 4)).toBeLessThan(0.01);
  expect(off(reckoned.high, 8.39)).toBeLessThan(0.01);
});
