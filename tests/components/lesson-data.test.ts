import { expect, test } from 'vitest';
import { compileLesson, type Plan } from '../../shared/compile/index.ts';
import { ageRanges, dataText, lessonData } from '../../src/components/lesson-data.ts';
import { demoLessons, demoLibrary } from '../demo.ts';

const plans = demoLessons.map(({ id, file, text }) => {
  const { plan } = compileLesson(file, text, demoLibrary, id);
  if (plan === null) throw new Error(`${id} does not compile`);
  return { id, plan };
});

/** What the tests read of it; a list of one stands alone. */
interface Data {
  readonly name: string;
  readonly timeRequired: string;
  readonly teaches?: unknown;
  readonly assesses?: unknown;
}
const dataOf = (plan: Plan): Data => JSON.parse(dataText(lessonData(plan)));
const listOf = (value: unknown): readonly { readonly name: string; readonly termCode?: string }[] =>
  value === undefined ? [] : Array.isArray(value) ? value : [value as { readonly name: string }];

test('ages are those of pupils, the last one counted', () => {
  expect(ageRanges(['5-7', '7-9', '11-14'])).toEqual(['5-8', '11-13']);
  expect(ageRanges(['4-5'])).toEqual(['4']);
  expect(ageRanges(['9-11', '7-9'])).toEqual(['7-10']);
});

test.each(plans)('$id: what it teaches is what it has earned, and no more', ({ plan }) => {
  const { name, timeRequired, teaches, assesses } = dataOf(plan);
  expect({ name, timeRequired }).toEqual({ name: plan.title, timeRequired: `PT${plan.minutes}M` });
  const earned = plan.claims.filter(({ grade }) => grade !== 'touched');
  expect(listOf(teaches).map((row) => row.name)).toEqual(earned.map(({ summary }) => summary));
  const taught = listOf(teaches).map((row) => row.name);
  expect(listOf(assesses).filter((row) => !taught.includes(row.name))).toEqual([]);
});

test('what only the lead vouches for, and what is not practised, is not assessed', () => {
  const plan = plans.find(({ id }) => id === 'who-made-this')?.plan;
  const [claim, ...rest] = plan?.claims ?? [];
  if (plan === undefined || claim === undefined) throw new Error('no claim to try');
  const vouched = rest.filter(({ evidence }) => evidence.every(({ by }) => by === 'lead'));
  expect(vouched.length).toBe(1);
  const assessed = listOf(dataOf(plan).assesses).map((row) => row.name);
  expect(assessed).toContain(claim.summary);
  expect(assessed).not.toContain(vouched[0]?.summary);
  const taught = { ...plan, claims: [{ ...claim, grade: 'taught' as const }] };
  expect(listOf(dataOf(taught).teaches).length).toBe(1);
  expect(dataOf(taught)).not.toHaveProperty('assesses');
  const touched = { ...plan, claims: [{ ...claim, grade: 'touched' as const }] };
  expect(dataOf(touched)).not.toHaveProperty('teaches');
});

test('only fields that schema.org has for such a thing are written', () => {
  // Terms of schema.org, version 29, CreativeWork and LearningResource (FM, but for those in the dossier marked RF).
  const known = new Set(
    '@context @type name description inLanguage learningResourceType isAccessibleForFree timeRequired typicalAgeRange educationalLevel teaches assesses'.split(
      ' ',
    ),
  );
  for (const { plan } of plans)
    expect(Object.keys(dataOf(plan)).filter((key) => !known.has(key))).toEqual([]);
});

test('nothing in a lesson can end the element the data stands in', () => {
  const plan = plans[0]?.plan as Plan;
  const title = '</script><script>alert(1)</script><!-- & "quoted"';
  const text = dataText(lessonData({ ...plan, title }));
  expect(text).not.toContain('<');
  expect(JSON.parse(text).name).toBe(title);
  expect(dataText({ name: '</script>' })).toBe(String.raw`{"name":"\u003c/script>"}`);
});
