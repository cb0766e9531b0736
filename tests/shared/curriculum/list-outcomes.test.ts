import { expect, test } from 'vitest';
import { compileLesson } from '../../../shared/compile/index.ts';
import { listOutcomes } from '../../../shared/curriculum/index.ts';
import { BANDS } from '../../../shared/library/index.ts';
import { demoLessons, demoLibrary } from '../../demo.ts';

const { curricula } = demoLibrary;
const lessons = demoLessons.map(({ id, file, text }) => ({
  lesson: id,
  claims: compileLesson(file, text, demoLibrary, id).claims,
}));
const listed = listOutcomes(curricula, lessons).map(({ framework, groups }) => ({
  framework,
  groups,
  rows: groups.flatMap(({ subjects }) => subjects.flatMap(({ outcomes }) => outcomes)),
}));

test('every outcome of every framework is listed once', () => {
  expect(listed.map(({ framework }) => framework.id)).toEqual(curricula.frameworks.map(({ id }) => id));
  for (const { framework, rows } of listed)
    expect(rows.map(({ outcome }) => outcome.id).toSorted()).toEqual(
      framework.outcomes.map(({ id }) => id).toSorted(),
    );
});

test('each earned claim stands beside its outcome, and no other', () => {
  const shown = listed.flatMap(({ rows }) =>
    rows.flatMap(({ outcome, lessons: met }) =>
      met.map(({ lesson, grade }) => `${lesson} ${grade} ${outcome.id}`),
    ),
  );
  const earned = lessons.flatMap(({ lesson, claims }) =>
    claims.filter(({ fault }) => fault === null).map(({ outcome, grade }) => `${lesson} ${grade} ${outcome}`),
  );
  expect(earned.length).toBeGreaterThan(5);
  expect(shown.toSorted()).toEqual(earned.toSorted());
});

test('a claim that is not earned is not shown', () => {
  const [first] = lessons.filter(({ claims }) => claims.length > 0);
  const claims = (first?.claims ?? []).map((claim) => ({ ...claim, fault: { fault: 'unknown' } as const }));
  const rows = listOutcomes(curricula, [{ lesson: 'x', claims }]).flatMap(({ groups }) =>
    groups.flatMap(({ subjects }) => subjects.flatMap(({ outcomes }) => outcomes)),
  );
  expect(rows.filter((row) => row.lessons.length > 0)).toEqual([]);
});

test('groups go from the youngest up, each subject once within its ages', () => {
  for (const { groups } of listed) {
    const starts = groups.map(({ bands: [first] }) =>
      first === undefined ? BANDS.length : BANDS.indexOf(first),
    );
    expect(starts).toEqual(starts.toSorted((a, b) => a - b));
    for (const { subjects } of groups) {
      const names = subjects.map(({ subject }) => subject);
      expect(names).toEqual([...new Set(names)].toSorted());
    }
  }
});

test('the number of a source is its place in the framework’s own list', () => {
  for (const { framework, rows } of listed)
    for (const { outcome, sourceNumber } of rows)
      expect(framework.sources[sourceNumber - 1]?.id).toBe(outcome.source.ref);
});
