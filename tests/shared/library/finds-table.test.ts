import { expect, test } from 'vitest';
import { readFindsTable, readSite, type Find } from '../../../shared/library/index.ts';
import { demoLibrary } from '../../demo.ts';

const { vocabulary } = demoLibrary;
const COLUMNS =
  'pit,small find,context,object type,material,length mm,width mm,thickness mm,mass g,count,state,made by,used for,age,role,side,decoration,note';
const ROW =
  'P1,101,1102,pig-jaw,bone,118,49,24,57,,broken,natural,food,late-neolithic,evidence,left,,"left side, flat"';

const SITE = `id: mill-field
name: Mill Field
code: MLF
status: invented
story: An invented field.
organisation: Mill Field School (invented)
period: { label: Late Neolithic, from-bce: 2900, to-bce: 2400, status: FM, note: usual }
soils: gravel
pits:
  - id: P1
    cut: 1100
    centre: { east-m: 1, north-m: 2 }
    top-level-m-od: 8
    length-mm: 1000
    width-mm: 900
    depth-mm: 400
    profile: bowl
    fills: [{ context: 1102, description: silt, thickness-mm: 200 }]
`;

const told = (text: string): readonly string[] =>
  readFindsTable('finds.csv', text, vocabulary, 'invented').problems.map(
    ({ code, grade, from, edit }) =>
      `${code} ${from.line}:${from.column}${grade === 'caution' ? ' caution' : ''}${edit === undefined ? '' : ` → ${edit.text}`}`,
  );

const row = (from: string, to: string): string => {
  expect(ROW).toContain(from);
  return `${COLUMNS}\n${ROW.replace(from, to)}\n`;
};

test.each([
  { name: 'a table that is as it should be', text: `${COLUMNS}\n${ROW}\n`, expected: [] },
  {
    name: 'columns in capitals and with underscores',
    text: `${COLUMNS.toUpperCase().replaceAll(' ', '_')}\n${ROW}`,
    expected: [],
  },
  { name: 'a byte-order mark and Windows line ends', text: `\uFEFF${COLUMNS}\r\n${ROW}\r\n`, expected: [] },
  { name: 'labels in place of ids', text: row('natural,food', 'Not made,Food'), expected: [] },
  { name: 'no row at all', text: '', expected: ['file-empty 1:1'] },
  { name: 'a header alone', text: COLUMNS, expected: [] },
  { name: 'a missing column', text: `${COLUMNS.replace(',age', '')}\n`, expected: ['column-missing 1:1'] },
  {
    name: 'two missing columns',
    text: `${COLUMNS.replace(',age,role', '')}\n`,
    expected: ['column-missing 1:1', 'column-missing 1:1'],
  },
  {
    name: 'a misspelt column',
    text: `${COLUMNS.replace('note', 'notes')}\n`,
    expected: ['column-unknown 1:138 → note'],
  },
  {
    name: 'a column of another record',
    text: `${COLUMNS},finder\n${ROW},someone`,
    expected: ['column-unknown 1:143'],
  },
  { name: 'a column twice', text: `${COLUMNS},age\n${ROW},modern`, expected: ['column-repeated 1:143'] },
  { name: 'a row too short', text: `${COLUMNS}\nP1,101\n`, expected: ['row-ragged 2:1'] },
  { name: 'a row too long', text: `${COLUMNS}\n${ROW},more\n`, expected: ['row-ragged 2:1'] },
  { name: 'a number with its unit', text: row('118', '118 mm'), expected: ['cell-unreadable 2:26'] },
  { name: 'a number with a comma', text: row('118', '"118,5"'), expected: ['cell-unreadable 2:26'] },
  { name: 'an empty number', text: row('118', ''), expected: ['cell-unreadable 2:26'] },
  { name: 'a number below nought', text: row('118', '-118'), expected: ['cell-unreadable 2:26'] },
  { name: 'a length of nought', text: row('118', '0'), expected: ['cell-unreadable 2:26'] },
  { name: 'half a find', text: row('57,,', '57,0.5,'), expected: ['cell-unreadable 2:39'] },
  { name: 'no finds in a row', text: row('57,,', '57,0,'), expected: ['cell-unreadable 2:39'] },
  {
    name: 'a small find that is no whole number',
    text: row('101', '101.5'),
    expected: ['cell-unreadable 2:4'],
  },
  { name: 'a mass in words', text: row(',57,', ',heavy,'), expected: ['cell-unreadable 2:36'] },
  {
    name: 'a mass ten times too great',
    text: row(',57,', ',570,'),
    expected: ['mass-doubtful 2:36 caution'],
  },
  { name: 'a misspelt material', text: row('bone', 'bonne'), expected: ['word-unknown 2:21 → bone'] },
  {
    name: 'a material of no word like it',
    text: row('bone', 'unobtainium'),
    expected: ['word-unknown 2:21'],
  },
  { name: 'a misspelt state', text: row('broken', 'brokn'), expected: ['word-unknown 2:40 → broken'] },
  { name: 'an unknown side', text: row('left,', 'middle,'), expected: ['word-unknown 2:84'] },
  {
    name: 'three faults in one row',
    text: row('118,49', '118x,y').replace('bone', 'bonne'),
    expected: ['cell-unreadable 2:27', 'cell-unreadable 2:32'],
  },
  {
    name: 'a quote that is never closed',
    text: `${COLUMNS}\n${ROW.replace('flat"', 'flat')}\n`,
    expected: ['cell-unreadable 2:90'],
  },
])('$name', ({ text, expected }) => {
  expect(told(text)).toEqual(expected);
});

test('a row with an error is left out, and the others are kept', () => {
  const { rows, problems } = readFindsTable(
    'f.csv',
    `${COLUMNS}\n${ROW}\n${ROW.replace('101', 'x')}\n`,
    vocabulary,
    'invented',
  );
  expect(rows.map(({ find }) => find.id)).toEqual(['P1-101']);
  expect(problems).toHaveLength(1);
});

const findsOf = (text: string, tables: readonly string[]): readonly Find[] =>
  readSite(
    'mill-field.yaml',
    text,
    tables.map((table) => ({ file: 'mill-field.csv', text: table })),
    vocabulary,
  ).value?.pits[0]?.finds ?? [];

test('the same find by CSV and by YAML is the same find', () => {
  const inline = `${SITE}    finds:
      - small-find: 101
        context: 1102
        object-type: pig-jaw
        material: bone
        length-mm: 118
        width-mm: 49
        thickness-mm: 24
        mass-g: 57
        state: broken
        made-by: natural
        used-for: food
        age: late-neolithic
        role: evidence
        side: left
        note: left side, flat
`;
  const byYaml = findsOf(inline, []);
  expect(byYaml).toHaveLength(1);
  expect(findsOf(SITE, [`${COLUMNS}\n${ROW}`])).toEqual(byYaml);
  expect(byYaml[0]).toEqual({
    id: 'P1-101',
    pit: 'P1',
    smallFind: 101,
    context: 1102,
    attributes: {
      material: 'bone',
      'made-by': 'natural',
      'used-for': 'food',
      age: 'late-neolithic',
      state: 'broken',
      'object-type': 'pig-jaw',
    },
    lengthMm: 118,
    widthMm: 49,
    thicknessMm: 24,
    massG: 57,
    count: 1,
    role: 'evidence',
    side: 'left',
    note: 'left side, flat',
    status: 'invented',
  });
});

test.each([
  { name: 'a pit that the site does not have', table: ROW.replace('P1', 'P9'), expected: 'find-unknown 2:1' },
  {
    name: 'a context that the pit does not have',
    table: ROW.replace('1102', '1103'),
    expected: 'find-unknown 2:8',
  },
  { name: 'a small find that stands twice', table: `${ROW}\n${ROW}`, expected: 'find-repeated 3:4' },
])('$name is told in the table, not in the site', ({ table, expected }) => {
  const { problems } = readSite(
    'mill-field.yaml',
    SITE,
    [{ file: 'finds.csv', text: `${COLUMNS}\n${table}` }],
    vocabulary,
  );
  expect(problems.map(({ file, code, from }) => `${file} ${code} ${from.line}:${from.column}`)).toEqual([
    `finds.csv ${expected}`,
  ]);
});

test.each([
  { name: 'a misspelt key', from: 'depth-mm', to: 'dept-mm', expected: 'key-unknown 16:5' },
  { name: 'an id in capitals', from: 'id: mill-field', to: 'id: Mill Field', expected: 'value-unfit 1:5' },
  { name: 'a status of no kind', from: 'status: invented', to: 'status: true', expected: 'value-unfit 4:9' },
  {
    name: 'a pit without fills',
    from: '    fills: [{ context: 1102, description: silt, thickness-mm: 200 }]\n',
    to: '',
    expected: 'key-missing 10:5',
  },
  {
    name: 'a length below nought',
    from: 'length-mm: 1000',
    to: 'length-mm: -1',
    expected: 'value-unfit 14:16',
  },
])('a site with $name', ({ from, to, expected }) => {
  expect(SITE).toContain(from);
  const { problems } = readSite('mill-field.yaml', SITE.replace(from, to), [], vocabulary);
  expect(problems.map(({ code, from: at }) => `${code} ${at.line}:${at.column}`)).toEqual([expected]);
});
