import type * as z from 'zod';
import { expect, test } from 'vitest';
import type {
  Compiled,
  CompileContext,
  KindBase,
  Score,
  ScoredKind,
  Sheet,
  Told,
  UnscoredKind,
} from '../../../shared/activities/kind.ts';
import { sort } from '../../../shared/activities/sort/kind.ts';
import { stream, type Stream } from '../../../shared/chance/index.ts';
import { placeFaults, readLesson } from '../../../shared/lesson/index.ts';
import { demoLibrary } from '../../demo.ts';
import { mean } from './laws.ts';
import { count, wonder } from './toy-kind.ts';

// The pattern of shared/activities/index.ts, with two lines more. That it compiles is half of the test.
const kinds = { count, sort, wonder } as const;
type Kinds = typeof kinds;
type KindName = keyof Kinds;
type ScoredName = { [K in KindName]: Kinds[K]['isScored'] extends true ? K : never }[KindName];
type UnscoredName = Exclude<KindName, ScoredName>;
type Blocks = { readonly [K in KindName]: z.output<Kinds[K]['schema']> };
type Activities = { readonly [K in KindName]: NonNullable<ReturnType<Kinds[K]['compile']>['activity']> };
type Plays = { readonly [K in KindName]: z.output<Kinds[K]['playSchema']> };
const table: { readonly [K in KindName]: KindBase<Blocks[K], Activities[K], Plays[K]> } = kinds;
const scored: { readonly [K in ScoredName]: ScoredKind<Blocks[K], Activities[K], Plays[K]> } = kinds;
const unscored: { readonly [K in UnscoredName]: UnscoredKind<Blocks[K], Activities[K], Plays[K]> } = kinds;

const compileBlock = <K extends KindName>(
  kind: K,
  id: string,
  block: Blocks[K],
  context: CompileContext,
): Compiled<Activities[K]> => table[kind].compile(id, block, context);
const score = <K extends ScoredName>(activity: Activities[K] & { kind: K }, play: Plays[K]): Score =>
  scored[activity.kind].score(activity, play);
const recordPlay = <K extends ScoredName>(activity: Activities[K] & { kind: K }): Plays[K] =>
  scored[activity.kind].record(activity);
const guessPlay = <K extends ScoredName>(activity: Activities[K] & { kind: K }, chance: Stream): Plays[K] =>
  scored[activity.kind].guess(activity, chance);
const tellPlay = <K extends UnscoredName>(activity: Activities[K] & { kind: K }, play: Plays[K]): Told =>
  unscored[activity.kind].tell(activity, play);
const sheetsOf = <K extends KindName>(activity: Activities[K] & { kind: K }): readonly Sheet[] =>
  table[activity.kind].paper(activity);

const lessonWith = (pit: string): string => `---
title: How many?
site: wendle-marsh
bands: [7-9]
minutes: 10
---
Look into the pit.

\`\`\`count
title: How many finds?
pit: ${pit}
most: 10
minutes: 5
\`\`\`
`;

const contextOf = (site: CompileContext['site']): CompileContext => ({
  library: demoLibrary,
  site,
  bands: ['7-9'],
  setting: 'classroom',
  chance: stream('1'),
});

function compileCount(text: string) {
  const lesson = readLesson('how-many.md', text, { count: count.schema, sort: sort.schema });
  const block = lesson.parts.flatMap((part) => (part.part === 'block' ? [part.block] : []))[0];
  const site = demoLibrary.sites[0];
  if (block === undefined || site === undefined)
    throw new Error('the lesson has no block, or the demo no site');
  const context = contextOf(site);
  // The block passed the schema of its kind in readLesson.
  const { activity, faults } = compileBlock('count', 'count-1', block.value as Blocks['count'], context);
  return { activity, problems: [...lesson.problems, ...placeFaults(lesson.source, faults, block.locate)] };
}

test('a kind added by one line goes through parse, compile, play, score and paper', () => {
  const { activity, problems } = compileCount(lessonWith('P3'));
  expect(problems).toEqual([]);
  if (activity === null) throw new Error('nothing was compiled');
  expect(activity).toMatchObject({ kind: 'count', finds: 9 });
  expect(score(activity, recordPlay(activity)).score).toBe(1);
  const guesses = Array.from(
    { length: 5000 },
    (_, seed) => score(activity, guessPlay(activity, stream(`${seed}`))).score ?? 0,
  );
  expect(Math.abs(mean(guesses))).toBeLessThan(0.02);
  expect(sheetsOf(activity)).toHaveLength(1);
});

test('its problems have their place in the whole file', () => {
  const { activity, problems } = compileCount(lessonWith('P77'));
  expect(activity).toBeNull();
  expect(problems.map(({ code, from }) => `${code} ${from.line}:${from.column}`)).toEqual([
    'find-unknown 11:6',
  ]);
});

test('so does one without a right answer, which has nothing to score', () => {
  const [site] = demoLibrary.sites;
  if (site === undefined) throw new Error('the demo has no site');
  const block = { title: 'What do you wonder?', minutes: 5 };
  const { activity } = compileBlock('wonder', 'wonder-1', block, contextOf(site));
  if (activity === null) throw new Error('nothing was compiled');
  expect(tellPlay(activity, { activity: 'wonder-1', asked: 3 })).toEqual({ asked: 3 });
  expect(sheetsOf(activity)).toHaveLength(1);
  // @ts-expect-error A kind without a right answer is not one of those that are scored.
  expect(() => score(activity, { activity: 'wonder-1', asked: 3 })).toThrow(TypeError);
});
