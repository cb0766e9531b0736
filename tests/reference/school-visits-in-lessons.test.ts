import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { parse, stringify } from 'yaml';
import { compileLesson } from '../../shared/compile/index.ts';
import { BANDS } from '../../shared/library/index.ts';
import { demoLibrary } from '../demo.ts';

interface Case {
  readonly id: string;
  readonly about: string;
  readonly input: {
    readonly youngest: number;
    readonly setting: string;
    readonly stations: readonly Readonly<Record<string, unknown>>[];
  };
  readonly expect: { readonly refusals: readonly string[] };
}

// The shape is this file's own; a case without a field fails its test.
const cases = parse(readFileSync('tests/reference/school-visits.yaml', 'utf8')) as readonly Case[];

const kebab = (word: string): string => word.replaceAll(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

/** The keys of a case's station as a lesson writes them. */
const KEYS: Readonly<Record<string, string>> = {
  childrenAtOnce: 'children',
  edgeClass: 'edge',
  spectatorsAtMetres: 'spectators-at-metres',
  metresToUnbarrieredEdge: 'open-edge-at-metres',
  plantWorkingOnRoute: 'plant-working',
};

const asWritten = (station: Case['input']['stations'][number]) =>
  Object.fromEntries(
    Object.entries(station).map(([key, value]) =>
      key === 'pupilsFlake'
        ? ['pupils', ['flake']]
        : [KEYS[key] ?? key, key === 'kind' ? kebab(String(value)) : value],
    ),
  );

/** The band whose youngest age is nearest below. */
const bandFor = (age: number): string => {
  const band = BANDS.findLast((each) => Number(each.split('-')[0]) <= age);
  if (band === undefined) throw new Error(`no band for ${age}`);
  return band;
};

/** Refusals a lesson can meet; who is there on the day, it does not know. */
const OF_A_LESSON = demoLibrary.safety.refusals
  .filter(({ id, outcome }) => outcome === 'refuse' || id === 'X19' || id === 'X22')
  .map(({ id }) => id);

test('six of the fifteen are met by a lesson', () => {
  const met = cases.filter((each) => each.expect.refusals.some((id) => OF_A_LESSON.includes(id)));
  expect(met.map(({ id }) => id)).toEqual(['c03', 'c06', 'c07', 'c08', 'c14', 'c15']);
});

test.each(cases)('$id in the head of a lesson: $about', ({ input, expect: expected }) => {
  const visit = { setting: kebab(input.setting), stations: input.stations.map(asWritten) };
  const head = {
    title: 'A visit',
    site: 'wendle-marsh',
    bands: [bandFor(input.youngest)],
    minutes: 10,
    visit,
  };
  const { plan, problems } = compileLesson('case.md', `---\n${stringify(head)}---\n`, demoLibrary, 'a');
  const met = expected.refusals.filter((id) => OF_A_LESSON.includes(id));
  const told = problems
    .filter(({ code }) => code === 'visit-refused' || code === 'visit-held')
    .map(({ expected: sentence }) => /rule (X\d\d)/.exec(sentence)?.[1]);
  expect(new Set(told)).toEqual(new Set(met));
  expect(told.length).toBe(met.length);
  expect(problems.length).toBe(told.length);
  const isRefused = met.some((id) =>
    demoLibrary.safety.refusals.some((rule) => rule.id === id && rule.outcome === 'refuse'),
  );
  expect(plan === null).toBe(isRefused);
});
