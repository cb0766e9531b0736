import { expect, test } from 'vitest';
import { brainerdRobinson, cooccurrence, likenessMatrix } from '../../shared/assemblage/index.ts';

// Zuni glaze wares, counts of five types at nine places: Huntley 2004/2022, dataset pueblo in R package tabula (RF).
const pits = ['Atsinna', 'Cienega', 'Mirabal', 'PdMuertos', 'Hesh', 'LowPesc', 'BoxS', 'OjoBon', 'S170'];
const rows = [
  [16, 9, 3, 0, 1],
  [13, 3, 2, 0, 0],
  [9, 5, 2, 5, 0],
  [14, 12, 3, 0, 0],
  [0, 26, 4, 0, 0],
  [1, 26, 4, 0, 0],
  [0, 11, 3, 13, 0],
  [0, 0, 17, 0, 16],
  [0, 0, 18, 0, 14],
];

test('Huntley, pueblo: Atsinna and Cienega are 164 alike by Brainerd-Robinson (RF, tabula test_index.R, rounded there)', () => {
  expect(brainerdRobinson([16, 9, 3, 0, 1], [13, 3, 2, 0, 0]).value).toBeCloseTo(164.3678, 4);
});

test('Huntley, pueblo: the whole Brainerd-Robinson matrix (DER, computed with numpy from Robinson 1951 and Brainerd 1951)', () => {
  const expected = [
    [200.0, 164.37, 152.38, 179.31, 82.76, 89.21, 82.76, 27.59, 27.59],
    [164.37, 200.0, 138.1, 150.57, 55.56, 62.01, 55.56, 22.22, 22.22],
    [152.38, 138.1, 200.0, 152.38, 66.67, 73.12, 114.29, 19.05, 19.05],
    [179.31, 150.57, 152.38, 200.0, 103.45, 109.9, 102.17, 20.69, 20.69],
    [82.76, 55.56, 66.67, 103.45, 200.0, 193.55, 103.7, 26.67, 26.67],
    [89.21, 62.01, 73.12, 109.9, 193.55, 200.0, 103.7, 25.81, 25.81],
    [82.76, 55.56, 114.29, 102.17, 103.7, 103.7, 200.0, 22.22, 22.22],
    [27.59, 22.22, 19.05, 20.69, 26.67, 25.81, 22.22, 200.0, 190.53],
    [27.59, 22.22, 19.05, 20.69, 26.67, 25.81, 22.22, 190.53, 200.0],
  ];
  const matrix = likenessMatrix({ pits, kinds: ['a', 'b', 'c', 'd', 'e'], rows }, 'brainerd-robinson');
  for (const [first, row] of expected.entries()) {
    for (const [second, value] of row.entries()) {
      expect(Math.abs((matrix[first]?.[second] ?? -1) - value)).toBeLessThan(0.006);
    }
  }
});

test('Huntley, pueblo: places where two types lie together (RF, compare tabula test_occurrence.R)', () => {
  expect(cooccurrence(rows)).toEqual([
    [0, 5, 5, 1, 1],
    [5, 0, 7, 2, 1],
    [5, 7, 0, 2, 3],
    [1, 2, 2, 0, 0],
    [1, 1, 3, 0, 0],
  ]);
});
