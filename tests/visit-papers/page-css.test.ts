import { expect, test } from 'vitest';
import { usualSize } from '../../src/bench/usual-size.ts';
import { roomOf } from '../../src/printing/count-sheets.ts';
import { pageCss, SIDEWAYS } from '../../src/printing/page-css.ts';
import { sourceFiles } from '../rules/source-files.ts';

const sheets = sourceFiles(['src'], ['.css'])
  .map(({ text }) => text)
  .join('\n');

/** Every named page of the style sheets, with what is said of it. */
const named = [...sheets.matchAll(/@page ([\w-]+) \{([^}]*)\}/g)].map(([, name = '', said = '']) => ({
  name,
  said,
}));
const papers = named.filter(({ name }) => !name.startsWith('day'));

/** Margins of a page in millimetres: head, end side, foot, start side. */
function marginsOf(said: string): readonly number[] {
  const [, list = ''] = /margin: ([^;]+);/.exec(said) ?? [];
  const [head = NaN, end = head, foot = head, start = end] = [...list.matchAll(/([\d.]+)mm/g)].map(([, mm]) =>
    Number(mm),
  );
  return [head, end, foot, start];
}

test('a size of paper is said of every page, and of each that lies on its side', () => {
  const landscape = papers.filter(({ said }) => said.includes('size: landscape')).map(({ name }) => name);
  expect(landscape.length).toBeGreaterThan(2);
  expect([...SIDEWAYS].toSorted()).toEqual(landscape.toSorted());
  expect(pageCss('Letter')).toContain('@page{size:Letter}@page risk-assessment{size:Letter landscape}');
});

// ISO 216: 210 × 297 mm; the American letter 8.5 × 11 inches of 25.4 mm. Less the margins the style sheets leave.
test('sheets are counted by the room that the margins of the style sheets leave', () => {
  const [, whole = ''] = /@page \{([^@]*)/.exec(sheets) ?? [];
  const [head = 0, end = 0, foot = 0, start = 0] = marginsOf(whole);
  expect(roomOf('safety', 'A4')).toEqual({ across: 210 - start - end, down: 297 - head - foot });
  expect(roomOf('safety', 'Letter').across).toBeCloseTo(8.5 * 25.4 - start - end);
  expect(roomOf('safety', 'Letter').down).toBeCloseTo(11 * 25.4 - head - foot);
  for (const { name, said } of papers.filter((page) => page.said.includes('margin:'))) {
    const [above = 0, right = 0, below = 0, left = 0] = marginsOf(said);
    const [across, down] = said.includes('size: landscape') ? [297, 210] : [210, 297];
    expect(roomOf(name, 'A4'), name).toEqual({ across: across - left - right, down: down - above - below });
  }
});

test.each([
  { language: 'en-GB', size: 'A4' },
  { language: 'en-US', size: 'Letter' },
  { language: 'fr-CA', size: 'Letter' },
  { language: 'en', size: 'A4' },
  { language: 'de-DE', size: 'A4' },
])('where $language is spoken paper is $size', ({ language, size }) => {
  expect(usualSize(language)).toBe(size);
});
