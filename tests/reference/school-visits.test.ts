import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { parse, stringify } from 'yaml';
import { readSituation } from '../../shared/library/index.ts';
import { safetyReport } from '../../shared/safety/index.ts';
import { readLibrary } from '../../src/loaders/read-library.ts';

interface Case {
  readonly id: string;
  readonly about: string;
  readonly source: string;
  readonly input: Readonly<Record<string, unknown>>;
  readonly working: string;
  readonly expect: Readonly<Record<string, number | boolean | readonly string[]>>;
}

const { library } = await readLibrary('content');
const rules = library.safety;
// The shape is this file's own; a case without a field fails its test.
const cases = parse(readFileSync('tests/reference/school-visits.yaml', 'utf8')) as readonly Case[];

test('there are fifteen situations', () => expect(cases.length).toBe(15));

test.each(cases)('$id $about ($source)', ({ input, expect: expected }) => {
  const { value, problems } = readSituation('case.yaml', stringify(input), rules);
  expect(problems).toEqual([]);
  if (value === null) throw new Error('not read');
  const report = safetyReport(rules, value);
  const { hazards = [], controls = [], refusals, ...numbers } = expected;
  expect(report.adults).toMatchObject(numbers);
  expect([...new Set(report.refusals.map(({ id }) => id))]).toEqual(refusals);
  const found = report.hazards.map(({ id }) => id);
  // Both are lists of ids in the file.
  for (const id of hazards as readonly string[]) expect(found).toContain(id);
  const used = report.controls.map(({ id }) => id);
  for (const id of controls as readonly string[]) expect(used).toContain(id);
});
