import { expect, test } from 'vitest';
import type { Find, Library } from '../../../../shared/library/index.ts';
import { demoLibrary } from '../../../demo.ts';
import { compiled, lessonOf, sortOf, told } from './sort-of.ts';
import { compileLesson } from '../../../../shared/compile/index.ts';

const MADE = `title: Who made this?
finds: [P3-124, P3-125, P3-127, P3-131]
by: made-by
trays: [carved, ground, fired, not made]
minutes: 8`;

test('the key comes from the finds’ attributes: nobody types an answer', () => {
  const { finds } = sortOf(MADE);
  expect(
    Object.fromEntries(finds.map(({ id, homes }) => [id, homes.map(({ tray, by }) => `${tray} ${by}`)])),
  ).toEqual({
    'P3-124': ['carved record'],
    'P3-125': ['ground record'],
    'P3-127': ['fired record'],
    'P3-131': ['not-made record'],
  });
});

test('every home has a reason, and the type’s own sign goes before its value’s', () => {
  const { finds } = sortOf(MADE);
  const because = Object.fromEntries(finds.map(({ id, homes }) => [id, homes[0]?.because]));
  expect(because['P3-125']).toBe('Rubbing left a smooth face and fine lines.');
  expect(because['P3-131']).toBe('No scars, no pecking: the river did all of it.');
});

test('before the record is read, a find says what can be seen and not what it is', () => {
  for (const { plain, name } of sortOf(MADE).finds) {
    expect(plain).not.toBe('');
    expect(plain.toLowerCase()).not.toContain(name.toLowerCase());
  }
});

test('a second home is an argument, with the lead’s reason, after the record’s', () => {
  const { finds } = sortOf(`${MADE}\nalso: [{ find: P3-125, tray: carved, because: it was pecked first }]`);
  expect(finds.find(({ id }) => id === 'P3-125')?.homes.slice(1)).toEqual([
    { tray: 'carved', because: 'it was pecked first', by: 'argument' },
  ]);
});

test('decoys, natural and modern, have a home like any find', () => {
  const { finds } = sortOf(
    'title: x\nfinds: [P9-193, P9-194, P9-190]\nby: age\ntrays: [no age, modern, late neolithic]\nminutes: 8',
  );
  expect(Object.fromEntries(finds.map(({ id, homes }) => [id, homes[0]?.tray]))).toEqual({
    'P9-193': 'no-age',
    'P9-194': 'modern',
    'P9-190': 'late-neolithic',
  });
});

test('a tray that holds several values takes them all', () => {
  const { trays, finds } = sortOf(
    MADE.replace(
      '[carved, ground, fired, not made]',
      '[{ name: Made by people, holds: [carved, ground, fired], hint: shaped }, not made]',
    ),
  );
  expect(trays).toEqual([
    { id: 'made-by-people', name: 'Made by people', hint: 'shaped' },
    { id: 'not-made', name: 'not made', hint: 'as nature left it' },
  ]);
  expect(finds.filter(({ homes }) => homes[0]?.tray === 'made-by-people')).toHaveLength(3);
});

test('the pit is drawn where all finds come from one, and not where they come from several', () => {
  expect(sortOf(MADE).pit).toMatchObject({ id: 'P3', lengthMm: 1060, profile: 'steep-sided' });
  expect(sortOf(MADE.replace('P3-131', 'P4-140').replace(', not made', ', natural')).pit).toBeNull();
});

test('the whole of a pit can be named, and finds of it left out', () => {
  const ids = (finds: string): readonly string[] =>
    sortOf(`title: x\nfinds: ${finds}\nby: material\ntrays: ours\nminutes: 20`)
      .finds.map(({ id }) => id)
      .toSorted();
  expect(ids('{ pit: P3 }')).toHaveLength(9);
  expect(ids('{ pit: P3, leave-out: [P3-128, P3-131] }')).toEqual([
    'P3-123',
    'P3-124',
    'P3-125',
    'P3-126',
    'P3-127',
    'P3-129',
    'P3-130',
  ]);
});

test.each([
  {
    name: 'a find that is nowhere',
    block: MADE.replace('P3-131', 'P3-999'),
    expected: ['find-unknown 9:33'],
  },
  { name: 'a find twice', block: MADE.replace('P3-131', 'P3-124'), expected: ['find-repeated 9:33'] },
  {
    name: 'a pit that is nowhere',
    block: MADE.replace(/finds: .*/, 'finds: { pit: P33 }'),
    expected: ['find-unknown 9:15'],
  },
  {
    name: 'a find left out that was never in',
    block: MADE.replace(/finds: .*/, 'finds: { pit: P3, leave-out: [P4-140] }').replace(
      '[carved, ground, fired, not made]',
      '[carved, ground, fired, not made, flaked, burnt]',
    ),
    expected: ['find-unknown 9:31'],
  },
  {
    name: 'two finds only',
    block: MADE.replace(', P3-127, P3-131', '').replace(', fired, not made', ''),
    expected: ['finds-too-few 9:8'],
  },
  { name: 'a find without a tray', block: MADE.replace(', fired', ''), expected: ['find-homeless 9:25'] },
  {
    name: 'a tray that is no value',
    block: MADE.replace('ground,', 'grond,'),
    expected: ['tray-unknown 11:17'],
  },
  {
    name: 'a held value that is none',
    block: MADE.replace('ground,', '{ name: rubbed, holds: [grond] },'),
    expected: ['tray-unknown 11:41'],
  },
  {
    name: 'a tray twice',
    block: MADE.replace('carved,', 'carved, carved,'),
    expected: ['tray-repeated 11:17'],
  },
  {
    name: 'a value in two trays',
    block: MADE.replace('carved,', 'carved, { name: cut, holds: [carved] },'),
    expected: ['tray-overlap 11:25'],
  },
  {
    name: 'a tray that nothing belongs in',
    block: MADE.replace('carved,', 'carved, twisted,'),
    expected: ['tray-empty 11:17 caution'],
  },
  {
    name: 'a second home of a find that is not here',
    block: `${MADE}\nalso: [{ find: P4-140, tray: carved, because: x }]`,
    expected: ['find-unknown 13:16'],
  },
  {
    name: 'a second home in no tray',
    block: `${MADE}\nalso: [{ find: P3-125, tray: carvd, because: x }]`,
    expected: ['tray-unknown 13:30'],
  },
  {
    name: 'a second home that is the first',
    block: `${MADE}\nalso: [{ find: P3-125, tray: ground, because: x }]`,
    expected: ['home-needless 13:8 caution'],
  },
  {
    name: 'a second home without a reason',
    block: `${MADE}\nalso: [{ find: P3-125, tray: carved }]`,
    expected: ['key-missing 13:8'],
  },
  {
    name: 'second homes where pupils make the trays',
    block: `${MADE.replace(/trays: .*/, 'trays: ours')}\nalso: [{ find: P3-125, tray: carved, because: x }]`,
    expected: ['tray-unknown 13:30'],
  },
  {
    name: 'an attribute that there is not',
    block: MADE.replace('made-by', 'colour'),
    expected: ['word-unknown 10:5'],
  },
])('$name', ({ block, expected }) => {
  expect(told(block)).toEqual(expected);
});

/** The demo library with one find of pit 3 changed. */
function libraryWith(id: string, change: (find: Find) => Find): Library {
  const sites = demoLibrary.sites.map((site) => ({
    ...site,
    pits: site.pits.map((pit) => ({
      ...pit,
      finds: pit.finds.map((find) => (find.id === id ? change(find) : find)),
    })),
  }));
  return { ...demoLibrary, sites };
}

const FLAKES =
  'title: x\nfinds: [P1-101, P2-117, P1-106]\nby: used-for\ntrays: [waste from knapping, making flakes]\nminutes: 8';
const asCore = (find: Find): Find => ({
  ...find,
  attributes: { ...find.attributes, 'used-for': 'making-flakes' },
});

test('two finds that look alike and belong together are let be', () => {
  expect(told(FLAKES)).toEqual([]);
});

test('two finds that look alike and belong apart are refused', () => {
  expect(told(FLAKES, libraryWith('P2-117', asCore))).toEqual(['finds-look-alike 9:17']);
});

test.each([
  { name: 'a fifth longer', change: (find: Find): Find => ({ ...find, lengthMm: find.lengthMm * 1.35 }) },
  {
    name: 'broken',
    change: (find: Find): Find => ({ ...find, attributes: { ...find.attributes, state: 'broken' } }),
  },
  { name: 'from the other side', change: (find: Find): Find => ({ ...find, side: 'left' }) },
  { name: 'decorated', change: (find: Find): Find => ({ ...find, decoration: 'cordon' }) },
  { name: 'many pieces', change: (find: Find): Find => ({ ...find, count: 14 }) },
  {
    name: 'of another material',
    change: (find: Find): Find => ({ ...find, attributes: { ...find.attributes, material: 'chalk' } }),
  },
])('one that is $name can be told apart', ({ change }) => {
  expect(
    told(
      FLAKES,
      libraryWith('P2-117', (find) => change(asCore(find))),
    ),
  ).toEqual([]);
});

test('with second homes that make both trays right for both, look-alikes are let be', () => {
  const block = `${FLAKES}\nalso:\n  - { find: P1-101, tray: making flakes, because: it is thick }\n  - { find: P2-117, tray: waste from knapping, because: it is thin }`;
  expect(told(block, libraryWith('P2-117', asCore))).toEqual([]);
});

const forBand = (band: string, block: string): readonly string[] =>
  compileLesson(
    'a.md',
    lessonOf(block, `---\ntitle: x\nsite: wendle-marsh\nbands: [${band}]\nminutes: 60\n---\n`),
    demoLibrary,
    '1',
  ).problems.map(({ code, grade }) => `${code} ${grade}`);

test('the youngest band sets the limits, and they are cautions', () => {
  const whole =
    'title: x\nfinds: { pit: P3 }\nby: made-by\ntrays: [carved, ground, fired, flaked, burnt, not made]\nminutes: 3';
  expect(forBand('14-16', whole)).toEqual(['minutes-under caution']);
  expect(forBand('5-7', whole)).toEqual([
    'finds-too-many caution',
    'trays-too-many caution',
    'minutes-under caution',
  ]);
  expect(forBand('5-7, 14-16', whole)).toEqual([
    'finds-too-many caution',
    'trays-too-many caution',
    'minutes-under caution',
  ]);
  expect(forBand('4-5', MADE.replace('minutes: 8', 'minutes: 9'))).toContain('minutes-over caution');
});

test('a sort with cautions has a plan, one with errors has none', () => {
  expect(compiled(MADE.replace('carved,', 'carved, twisted,')).plan).not.toBeNull();
  expect(compiled(MADE.replace('ground,', 'grond,')).plan).toBeNull();
});
