import { expect, test } from 'vitest';
import { readFindsTable } from '../../shared/library/index.ts';
import { demoLibrary, demoProblems } from '../demo.ts';

// Recorded lengths, widths, thicknesses (mm) and masses (g) are RF from the record named. Shape factors are DER.
const RECORDS = [
  { record: 'leaf arrowhead BERK-04C183', type: 'leaf-arrowhead', mm: [23.95, 13.62, 3.48], massG: 1.1 },
  { record: 'leaf arrowhead HESH-46C226', type: 'leaf-arrowhead', mm: [37.3, 16.9, 5.3], massG: 2.71 },
  { record: 'leaf arrowhead 134054, tip lost', type: 'leaf-arrowhead', mm: [28.3, 19.3, 4.9], massG: 2.06 },
  { record: 'scraper 989389', type: 'end-scraper', mm: [42.2, 34.7, 10.6], massG: 22.1 },
  { record: 'scraper HESH-30F2F2', type: 'end-scraper', mm: [13.7, 14.2, 5.5], massG: 1.14 },
  { record: 'scraper NARC-3F0CC4 no. 4', type: 'end-scraper', mm: [27, 18, 7], massG: 3.9 },
  { record: 'scraper NARC-3F0CC4 no. 6', type: 'end-scraper', mm: [37, 25, 8], massG: 6.8 },
  { record: 'blade NARC-3F0CC4 no. 5', type: 'blade', mm: [53, 20, 5], massG: 5.1 },
  { record: 'blade HESH-C18154', type: 'blade', mm: [43.1, 18.4, 5.4], massG: 4.71 },
  { record: 'flake NARC-3F0CC4 no. 8', type: 'flake', mm: [37, 24, 5], massG: 4.9 },
  { record: 'flake HESH-BB5B00', type: 'flake', mm: [40.1, 22.5, 8.9], massG: 7.15 },
  { record: 'flake 957734', type: 'flake', mm: [25, 21.4, 4.3], massG: 2.63 },
  { record: 'serrated piece NLM-910DC2', type: 'serrated-flake', mm: [61.1, 16.2, 9.4], massG: 8.9 },
] as const;

const HEADER =
  'pit,small find,context,object type,material,length mm,width mm,thickness mm,mass g,state,made by,used for,age,role';

const codesFor = (type: string, mm: readonly number[], massG: number): readonly string[] =>
  readFindsTable(
    'finds.csv',
    `${HEADER}\nP1,1,1102,${type},flint,${mm.join(',')},${massG},whole,flaked,none,late-neolithic,evidence\n`,
    demoLibrary.vocabulary,
    'RF',
  ).problems.map(({ code }) => code);

test.each(RECORDS)(
  'Portable Antiquities Scheme, $record: its recorded mass is believed',
  ({ type, mm, massG }) => {
    expect(codesFor(type, mm, massG)).toEqual([]);
  },
);

test.each(RECORDS)(
  'Portable Antiquities Scheme, $record: three times its mass is doubted',
  ({ type, mm, massG }) => {
    expect(codesFor(type, mm, massG * 3)).toEqual(['mass-doubtful']);
  },
);

test('no demo find has a mass that its type, stone and size could not have', () => {
  expect(demoLibrary.sites.flatMap(({ pits }) => pits.flatMap(({ finds }) => finds)).length).toBeGreaterThan(
    80,
  );
  expect(demoProblems).toEqual([]);
});
