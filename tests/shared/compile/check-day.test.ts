import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkDay, compileLesson } from '../../../shared/compile/index.ts';
import { hasErrors, PUPILS_DO } from '../../../shared/lesson/index.ts';
import { EDGE_CLASSES, EXPOSURES, SETTINGS, STATION_KINDS } from '../../../shared/safety/index.ts';
import { demoLibrary, home } from '../../demo.ts';
import { BLOCK } from '../lesson/lesson-text.ts';

const { safety } = demoLibrary;

const dayOf = (station: string, ages: string, setting = 'outdoors'): string => `title: A day
status: invented
slots:
  - { from: "09:00", to: "09:20" }
setting: ${setting}
groups:
  elm: { name: Elm, pupils: 8, ages: "${ages}", arrives: "08:50", leaves: "12:00" }
stations:
  one: ${station}
`;

const refusedIn = (text: string): readonly string[] =>
  checkDay('day.yaml', text, safety)
    .problems.filter(({ grade }) => grade === 'error')
    .map(({ code, from }) => `${code} ${from.line}:${from.column}`);

test.each(['class-morning', 'open-day'])('nothing of the demo day %s is refused', (name) => {
  const text = readFileSync(join(home, `content/days/${name}.yaml`), 'utf8');
  const read = checkDay(`${name}.yaml`, text, safety);
  expect(read.problems).toEqual([]);
  expect(read.value?.stations.length).toBeGreaterThan(4);
});

describe('what is never asked of children', () => {
  test.each(PUPILS_DO.filter((act) => act !== 'watch'))('pupils who %s: no day is handed on', (act) => {
    const text = dayOf(
      `{ name: One, place: field, pupils: 8, kind: knapping-demo, work: { pupils: [${act}] } }`,
      '14-15',
    );
    expect(refusedIn(text)).toEqual(['visit-refused 9:84']);
    expect(checkDay('day.yaml', text, safety).value).toBeNull();
  });

  test('an edge too sharp for the youngest group that may come, and not for those who are old enough', () => {
    const table = (fromAge: string): string =>
      `{ name: One, place: field, pupils: 8, kind: sharp-handling, ${fromAge}work: { edge: E3, exposure: handle } }`;
    expect(refusedIn(dayOf(table(''), '5-6'))).toHaveLength(1);
    // Nobody of five comes to a table for those of fourteen.
    expect(refusedIn(dayOf(table('from-age: 14, '), '5-6'))).toEqual([]);
  });
});

test('a station of which nothing is said is not judged', () => {
  expect(refusedIn(dayOf('{ name: One, place: field, pupils: 8 }', '5-6'))).toEqual([]);
});

const BAND_BY_AGE = { '4-5': 4, '5-7': 5, '7-9': 7, '9-11': 9, '11-14': 11, '14-16': 14 } as const;

test('a station is refused in a day wherever it is refused in a lesson, and nowhere else', () => {
  let refused = 0;
  fc.assert(
    fc.property(
      fc.constantFrom(...STATION_KINDS),
      fc.constantFrom(...(Object.keys(BAND_BY_AGE) as (keyof typeof BAND_BY_AGE)[])),
      fc.constantFrom(...SETTINGS),
      fc.option(fc.constantFrom(...EDGE_CLASSES), { nil: undefined }),
      fc.option(fc.constantFrom(...EXPOSURES), { nil: undefined }),
      fc.option(fc.constantFrom(...PUPILS_DO), { nil: undefined, freq: 3 }),
      fc.record({ dry: fc.boolean(), powered: fc.boolean(), raw: fc.boolean(), plant: fc.boolean() }),
      (kind, band, setting, edge, exposure, act, flags) => {
        const work = [
          ...(edge === undefined ? [] : [`edge: ${edge}`]),
          ...(exposure === undefined ? [] : [`exposure: ${exposure}`]),
          ...(act === undefined ? [] : [`pupils: [${act}]`]),
          ...(flags.dry ? ['dry: true'] : []),
          ...(flags.powered ? ['powered-tool: true'] : []),
          ...(flags.raw ? ['raw-materials: true'] : []),
          ...(flags.plant ? ['plant-working: true'] : []),
        ].join(', ');
        const inDay = refusedIn(
          dayOf(
            `{ name: One, place: field, pupils: 8, kind: ${kind}, work: { ${work} } }`,
            String(BAND_BY_AGE[band]),
            setting,
          ),
        );
        const lesson = `---\ntitle: A lesson\nsite: wendle-marsh\nbands: [${band}]\nminutes: 30\nvisit:\n  setting: ${setting}\n  stations:\n    - { kind: ${kind}, children: 8${work === '' ? '' : `, ${work}`} }\n---\n${BLOCK}`;
        const { plan, problems } = compileLesson('l.md', lesson, demoLibrary, 'l');
        const inLesson = problems.filter(({ code }) => code === 'visit-refused');
        if (inLesson.length > 0) refused += 1;
        expect(inDay.length).toBe(inLesson.length);
        expect(inLesson.length > 0 && plan !== null && !hasErrors(problems)).toBe(false);
      },
    ),
    { numRuns: 1500, seed: 11 },
  );
  expect(refused).toBeGreaterThan(300);
});
