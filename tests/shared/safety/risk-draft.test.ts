import { expect, test } from 'vitest';
import { plainSituation, riskCsv, riskDraft, safetyReport } from '../../../shared/safety/index.ts';
import { readLibrary } from '../../../src/loaders/read-library.ts';

const { library } = await readLibrary('content');
const rules = library.safety;
const stations = [{ kind: 'knapping-demo', childrenAtOnce: 20, spectatorsAtMetres: 7 }] as const;
const situation = { ...plainSituation(20, 9, ['england-visits'], 'outdoors'), stations };
const draft = riskDraft(rules, safetyReport(rules, situation));

test('judgements and whatever only the site knows stay blank', () => {
  const blank = ['in-place', 'before', 'further', 'by-whom', 'by-when', 'done', 'after'];
  for (const { cells } of draft.rows) {
    const empty = draft.columns.filter((_, index) => cells[index]?.fill === 'blank').map(({ id }) => id);
    expect(empty).toEqual(blank);
  }
  expect(draft.blankRows).toBeGreaterThanOrEqual(5);
});

test('known facts carry how they are known', () => {
  const chips = draft.rows.find(({ hazard }) => hazard === 'flying-chips');
  const usual = chips?.cells[2];
  expect(usual?.fill === 'product' && usual.lines.some((line) => line.endsWith('(ASM: own)'))).toBe(true);
});

test('the table can be read by a spreadsheet, and no cell is taken for a formula', () => {
  const table = riskCsv(
    {
      columns: [
        { id: 'a', heading: 'A' },
        { id: 'b', heading: 'B' },
      ],
      rows: [
        {
          hazard: 'x',
          cells: [{ fill: 'product', lines: ['say "stop"', '=1+1'] }, { fill: 'blank' }],
        },
        { hazard: 'y', cells: [{ fill: 'product', lines: ['=1+1'] }, { fill: 'blank' }] },
      ],
      blankRows: 1,
    },
    ['DRAFT, not valid'],
  );
  expect(table).toBe('"DRAFT, not valid"\r\nA,B\r\n"say ""stop""\n=1+1",\r\n\'=1+1,\r\n,\r\n');
});
