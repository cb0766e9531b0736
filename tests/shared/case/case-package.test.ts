import { describe, expect, test } from 'vitest';
import { readCasePackage, writeCasePackage, writeFramework } from '../../../shared/case/index.ts';
import { gradeStage } from '../../../shared/case/grade-stage.ts';
import type { Framework } from '../../../shared/curriculum/index.ts';
import { readFramework } from '../../../shared/library/index.ts';
import { readFrameworkWords } from '../../../src/loaders/read-framework-words.ts';
import { demoLibrary } from '../../demo.ts';

const { frameworks } = demoLibrary.curricula;
const known = await readFrameworkWords('content', 'content');
const CHANGED = '2026-11-29T08:00:00Z';
const id = (digit: number): string => `00000000-0000-4000-8000-00000000000${digit}`;

const read = (data: unknown): ReturnType<typeof readCasePackage> =>
  readCasePackage('p.json', JSON.stringify(data, null, 2), known);

describe('the demo frameworks', () => {
  test('there are twelve', () => {
    expect(frameworks.length).toBe(12);
  });

  test.each(frameworks.map((framework) => [framework.id, framework] as const))(
    '%s comes back from its package unchanged, with nothing to say',
    (_, framework) => {
      const back = read(writeCasePackage(framework, CHANGED));
      expect(back.problems).toEqual([]);
      expect(back.value).toEqual(framework);
    },
  );

  test.each(frameworks.map((framework) => [framework.id, framework] as const))(
    '%s comes back from the text of a framework file unchanged',
    (_, framework) => {
      const back = readFramework('f.yaml', writeFramework(framework), known);
      expect(back.problems).toEqual([]);
      expect(back.value).toEqual(framework);
    },
  );

  test('a package of the same framework is the same bytes', () => {
    const [first] = frameworks;
    if (first === undefined) throw new Error('no framework');
    const written = (): string => JSON.stringify(writeCasePackage(first, CHANGED));
    expect(written()).toBe(written());
  });
});

const ngss = frameworks.find((framework) => framework.id === 'us-ngss') as Framework;

describe('a package of ours that another tool has changed', () => {
  test('an outcome moved to another stage is read where it now is', () => {
    const written = writeCasePackage(ngss, CHANGED);
    const [stageOne, stageTwo] = written.CFItems;
    const moved = written.CFAssociations.map((tie) =>
      tie.destinationNodeURI.identifier === stageOne?.identifier
        ? {
            ...tie,
            destinationNodeURI: { ...tie.destinationNodeURI, identifier: stageTwo?.identifier ?? '' },
          }
        : tie,
    );
    const back = read({ ...written, CFAssociations: moved });
    const [from, to] = ngss.stages;
    const were = ngss.outcomes.filter(({ stage }) => stage === from?.id).map((outcome) => outcome.id);
    expect(were.length).toBeGreaterThan(0);
    for (const outcome of back.value?.outcomes ?? [])
      if (were.includes(outcome.id)) expect(outcome.stage).toBe(to?.id);
  });

  test('an item of someone else’s is added in its own words, with the package as its source', () => {
    const written = writeCasePackage(ngss, CHANGED);
    const tie = written.CFAssociations.at(-1);
    const added = {
      identifier: id(1),
      uri: 'urn:x:1',
      fullStatement: 'Says where a stone came from.',
      lastChangeDateTime: CHANGED,
    };
    const back = read({
      ...written,
      CFItems: [...written.CFItems, added],
      CFAssociations: [
        ...written.CFAssociations,
        { ...tie, identifier: id(2), originNodeURI: { title: '', identifier: id(1), uri: 'urn:x:1' } },
      ],
    });
    expect(back.value?.outcomes.at(-1)).toMatchObject({
      id: id(1),
      code: null,
      stage: ngss.outcomes.at(-1)?.stage,
      source: { ref: 'package' },
      evidence: [],
    });
    expect(back.value?.sources.map((source) => source.id)).toContain('package');
    expect(back.problems.map(({ grade }) => grade)).toEqual(['caution']);
  });
});

const entity = (digit: number): Record<string, unknown> => ({
  identifier: id(digit),
  uri: `https://frameworks.example/${digit}`,
  lastChangeDateTime: '2020-01-02T03:04:05+00:00',
});
const childOf = (digit: number, child: number, parent: number): Record<string, unknown> => ({
  ...entity(digit),
  associationType: 'isChildOf',
  originNodeURI: { title: 'a', identifier: id(child), uri: 'urn:x' },
  destinationNodeURI: { title: 'b', identifier: id(parent), uri: 'urn:x' },
});

/** A small package such as a publisher in the United States might make. */
const anothers = {
  CFDocument: {
    ...entity(0),
    creator: 'A publisher',
    title: '2020 Earth Skills',
    subject: ['Earth Science'],
  },
  CFItems: [
    { ...entity(1), fullStatement: 'Rocks', educationLevel: ['03', '04'] },
    { ...entity(2), fullStatement: 'Sorts rocks by what they are made of.', humanCodingScheme: 'ES.3.1' },
    { ...entity(3), fullStatement: 'x'.repeat(300), educationLevel: ['KG'] },
    { ...entity(4), fullStatement: 'Nobody says for whom.' },
  ],
  CFAssociations: [
    childOf(5, 1, 0),
    childOf(6, 2, 1),
    childOf(7, 3, 0),
    childOf(8, 4, 0),
    { ...childOf(9, 2, 7), associationType: 'isRelatedTo' },
  ],
};

describe('a package of someone else’s', () => {
  test('what has nothing below it is an outcome; grades come from above; nothing is evidence', () => {
    const { value } = read(anothers);
    expect(value).toMatchObject({ id: 'earth-skills', name: '2020 Earth Skills', country: '' });
    expect(value?.stages).toEqual([
      { id: '3-4', label: 'Grades 3-4', from: 8, to: 10 },
      { id: 'k', label: 'Grade K', from: 5, to: 6 },
    ]);
    expect(value?.outcomes.map((outcome) => [outcome.id, outcome.stage, outcome.subject])).toEqual([
      ['ES.3.1', '3-4', 'earth-science'],
      [id(3), 'k', 'earth-science'],
    ]);
    expect(value?.outcomes[1]?.summary.length).toBe(200);
  });

  test('whose words they are, and what was left out, is told', () => {
    const told = read(anothers).problems;
    expect(told.map(({ grade, received }) => [grade, received])).toEqual([
      ['caution', '1 item without, the first "Nobody says for whom."'],
      ['caution', '2 statements in the publisher’s words'],
    ]);
  });

  test('the framework it makes is a framework file that reads without a problem', () => {
    const { value } = read(anothers);
    if (value === null) throw new Error('not read');
    expect(readFramework('f.yaml', writeFramework(value), known)).toMatchObject({ value, problems: [] });
  });
});

test.each([
  { levels: ['PK'], stage: { id: 'pk', label: 'Grade PK', from: 4, to: 5 } },
  { levels: ['03', '04', '05'], stage: { id: '3-5', label: 'Grades 3-5', from: 8, to: 11 } },
  { levels: ['12', '09'], stage: { id: '9-12', label: 'Grades 9-12', from: 14, to: 18 } },
  { levels: ['13'], stage: null },
  { levels: ['03', 'AD'], stage: null },
  { levels: [], stage: null },
])('grades $levels', ({ levels, stage }) => {
  expect(gradeStage(levels)).toEqual(stage);
});

type Json = Record<string, unknown>;
const spoilt = (
  change: (copy: { CFDocument: Json; CFItems: Json[]; CFAssociations: Json[] }) => void,
): Json => {
  const copy = structuredClone(anothers) as unknown as Parameters<typeof change>[0];
  change(copy);
  return copy;
};

test.each([
  {
    name: 'no document',
    data: { CFItems: [] },
    code: 'key-missing',
    received: 'nothing',
  },
  {
    name: 'a document without a title',
    data: spoilt(({ CFDocument }) => delete CFDocument['title']),
    code: 'key-missing',
    received: 'nothing',
  },
  {
    name: 'an identifier that is no UUID',
    data: spoilt(({ CFItems }) => Object.assign(CFItems[1] ?? {}, { identifier: 'ES.3.1' })),
    code: 'value-unfit',
    received: '"ES.3.1"',
  },
  {
    name: 'a date in words',
    data: spoilt(({ CFItems }) => Object.assign(CFItems[1] ?? {}, { lastChangeDateTime: 'last week' })),
    code: 'value-unfit',
    received: '"last week"',
  },
  {
    name: 'an item twice',
    data: spoilt(({ CFItems }) => Object.assign(CFItems[2] ?? {}, { identifier: id(2) })),
    code: 'id-repeated',
    received: 'a second time',
  },
  {
    name: 'a code twice',
    data: spoilt(({ CFItems }) => Object.assign(CFItems[2] ?? {}, { humanCodingScheme: 'ES.3.1' })),
    code: 'id-repeated',
    received: '"ES.3.1" a second time',
  },
  {
    name: 'a parent that is not there',
    data: spoilt(({ CFAssociations }) => CFAssociations.push(childOf(9, 2, 8))),
    code: 'word-unknown',
    received: 'does not hold',
  },
  {
    name: 'a child that is not there',
    data: spoilt(({ CFAssociations }) => CFAssociations.push(childOf(9, 8, 1))),
    code: 'word-unknown',
    received: 'does not hold',
  },
  {
    name: 'a circle',
    data: spoilt(({ CFAssociations }) => Object.assign(CFAssociations[0] ?? {}, childOf(5, 1, 2))),
    code: 'value-unfit',
    received: 'below itself',
  },
  {
    name: 'no items',
    data: spoilt((copy) => Object.assign(copy, { CFItems: [], CFAssociations: [] })),
    code: 'value-unfit',
    received: 'none',
  },
])('$name is told with a place and a mend', ({ data, code, received }) => {
  const { value, problems } = read(data);
  expect(value).toBeNull();
  const errors = problems.filter(({ grade }) => grade === 'error');
  expect(errors.map((problem) => problem.code)).toContain(code);
  expect(errors.map((problem) => problem.received).join('\n')).toContain(received);
  for (const { mend, expected } of errors)
    expect({ mend: mend !== '', expected: expected !== '' }).toEqual({ mend: true, expected: true });
});

test('evidence of a kind nobody knows is told at its place', () => {
  const written = structuredClone(writeCasePackage(ngss, CHANGED)) as unknown as { CFItems: Json[] };
  const text = JSON.stringify(written, null, 2).replace('"kind": "sort"', '"kind": "sotr"');
  const { value, problems } = readCasePackage('p.json', text, known);
  expect(value).toBeNull();
  expect(problems).toMatchObject([{ code: 'word-unknown', received: '"sotr"', mend: 'write "sort"' }]);
  expect(text.split('\n')[(problems[0]?.from.line ?? 0) - 1]).toContain('"sotr"');
});
