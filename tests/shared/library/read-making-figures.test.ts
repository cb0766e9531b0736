import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readMakingFigures } from '../../../shared/library/read-making-figures.ts';

const text = readFileSync(new URL('../../../content/figures/making-hours.yaml', import.meta.url), 'utf8');
const read = (changed: string) => readMakingFigures('figures/making-hours.yaml', changed);

test('the demo file is clean, and every figure in it has a status and a source', () => {
  const { value, problems } = read(text);
  expect(problems).toEqual([]);
  expect(value?.figures.tables.stone.map(({ id }) => id)).toContain('fine-tuff');
  expect(value?.figures.limits.lengthMm).toEqual({ from: 40, to: 450, unit: 'mm' });
  expect(value?.figures.tables.skill[0]?.blankSuccess).toMatchObject({
    id: expect.stringContaining('master'),
    status: 'ASM',
  });
  expect(value?.experiments[0]?.inputs).toMatchObject({ lengthMm: 120 });
});

test.each([
  {
    name: 'a source that is not there',
    from: 'sources: [forum2014, pas-soham, own-judgement]',
    to: 'sources: [forum2041, pas-soham, own-judgement]',
    code: 'source-unknown',
    line: 34,
  },
  {
    name: 'ends that fall',
    from: 'low: 0.47\n    middle: 0.56',
    to: 'low: 0.57\n    middle: 0.56',
    code: 'value-unfit',
    line: 30,
  },
  {
    name: 'a coefficient missing',
    from: '- id: taper-factor\n',
    to: '- id: tapered\n',
    code: 'key-missing',
    line: null,
  },
  {
    name: 'an id twice',
    from: '- id: taper-factor\n',
    to: '- id: shape-factor\n',
    code: 'key-repeated',
    line: 37,
  },
  {
    name: 'a default that is in no table',
    from: 'stone: flint',
    to: 'stone: jade',
    code: 'word-unknown',
    line: 9,
  },
  {
    name: 'a status of no meaning',
    from: 'status: DER',
    to: 'status: SURE',
    code: 'word-unknown',
    line: null,
  },
  {
    name: 'a key no one knows',
    from: 'label: Flint\n',
    to: 'label: Flint\n    colour: grey\n',
    code: 'key-unknown',
    line: null,
  },
])('$name is a problem at its place, and the file is left out', ({ from, to, code, line }) => {
  expect(text).toContain(from);
  const { value, problems } = read(text.replace(from, to));
  expect(value).toBeNull();
  const problem = problems.find((candidate) => candidate.code === code);
  expect(problem?.grade).toBe('error');
  if (line !== null) expect(problem?.from.line).toBe(line);
});

test('text that is no YAML is a problem, not a throw', () => {
  expect(read('stones: [').value).toBeNull();
  expect(read('').problems.length).toBeGreaterThan(0);
});
