import { stringify } from 'yaml';
import { describe, expect, test } from 'vitest';
import { asksOf, tellPlay, type ActivityOf } from '../../../shared/activities/index.ts';
import { compileLesson } from '../../../shared/compile/index.ts';
import { demoLibrary } from '../../demo.ts';

const BLOCK = {
  title: 'Rubbish, or meant?',
  question: 'Why was it put in a pit?',
  stances: ['It was rubbish.', 'It was meant.', 'Both.'],
  voices: [
    { who: 'Some say', says: 'It was rubbish.', source: 'common-practice' },
    { who: 'Others say', says: 'It was meant.', source: 'garrow-2012' },
    { who: 'A child says', says: 'It was ours.', source: 'invented' },
  ],
  evidence: ['The same things lie in many pits.', 'It was new.'],
  minutes: 8,
};

function compiled(more: Readonly<Record<string, unknown>> = {}, seed = 'a', claims: readonly object[] = []) {
  const head = stringify({ title: 'A talk', site: 'wendle-marsh', bands: ['9-11'], minutes: 20, claims });
  return compileLesson(
    'talk.md',
    `---\n${head}---\n\`\`\`talk\n${stringify({ ...BLOCK, ...more })}\`\`\`\n`,
    demoLibrary,
    seed,
  );
}

function talkOf(more: Readonly<Record<string, unknown>> = {}, seed = 'a'): ActivityOf<'talk'> {
  const { plan, problems } = compiled(more, seed);
  const [activity] = plan?.activities ?? [];
  if (activity?.kind !== 'talk') throw new Error(JSON.stringify(problems));
  return activity;
}

describe('what a lead may write', () => {
  test('each voice says where it comes from: a work, the trade, or nowhere', () => {
    const sources = talkOf().voices.map(({ source }) => source);
    const garrow = demoLibrary.sources.find(({ id }) => id === 'garrow-2012');
    expect(sources).toHaveLength(3);
    expect(sources).toEqual(
      expect.arrayContaining([
        { from: 'practice' },
        { from: 'invented' },
        { from: 'work', citation: garrow?.citation, status: 'RF' },
      ]),
    );
  });

  test.each([
    {
      what: 'a voice from nowhere',
      more: { voices: [{ who: 'A', says: 'B' }, BLOCK.voices[0]] },
      code: 'key-missing',
    },
    { what: 'one voice only', more: { voices: BLOCK.voices.slice(0, 1) }, code: 'value-unfit' },
    { what: 'nothing that could change our mind', more: { evidence: [] }, code: 'value-unfit' },
    { what: 'one stance only', more: { stances: ['It was rubbish.'] }, code: 'value-unfit' },
    { what: 'a stance twice', more: { stances: ['Both.', 'both.'] }, code: 'stance-repeated' },
    { what: 'a key for the right answer', more: { answer: 'Both.' }, code: 'key-unknown' },
  ])('$what is refused: $code', ({ more, code }) => {
    const { plan, problems } = compiled(more);
    expect(plan).toBeNull();
    expect(problems.map((problem) => problem.code)).toEqual([code]);
  });

  test('a work nobody knows is told with the nearest', () => {
    const { problems } = compiled({
      voices: [BLOCK.voices[0], { who: 'A', says: 'B', source: 'garow-2012' }],
    });
    expect(problems.map(({ code, edit }) => [code, edit?.text])).toEqual([['source-unknown', 'garrow-2012']]);
  });
});

test('no voice has always the first word: the seed deals them, and nothing else', () => {
  const seeds = Array.from({ length: 40 }, (_, seed) => talkOf({}, `${seed}`));
  expect(new Set(seeds.map(({ voices }) => voices[0]?.who))).toEqual(
    new Set(['Some say', 'Others say', 'A child says']),
  );
  for (const { stances, evidence } of seeds) {
    expect(stances.map(({ words }) => words)).toEqual(BLOCK.stances);
    expect(evidence.map(({ words }) => words)).toEqual(BLOCK.evidence);
  }
});

test('the compiler sees nothing of a talk that a claim could rest on: that is for the lead to vouch', () => {
  expect(asksOf(talkOf(), demoLibrary)).toEqual({ met: [], things: null });
  const claims = [{ outcome: 'en-en-y16-viewpoints', grade: 'practised' }];
  expect(compiled({}, 'a', claims).claims[0]?.fault?.fault).toBe('no-evidence');
  const vouched = compiled({ vouched: ['group-talk'] }, 'a', claims).claims[0];
  expect(vouched?.fault).toBeNull();
  expect(vouched?.evidence.map(({ by }) => by)).toEqual(['lead']);
});

describe('what is told of a talk', () => {
  const tell = (play: Readonly<Record<string, Readonly<Record<string, number>>>>) =>
    tellPlay(talkOf(), { activity: 'talk-1', ...play });

  test.each([
    {
      what: 'four left one stance for another',
      before: { a: 10, b: 12, c: 5 },
      after: { a: 6, b: 12, c: 9 },
      moved: 4,
    },
    { what: 'the count is as before', before: { a: 10, b: 12 }, after: { a: 10, b: 12 }, moved: 0 },
    { what: 'all changed', before: { a: 3 }, after: { b: 3 }, moved: 3 },
    { what: 'fewer hands went up: nothing is said', before: { a: 10 }, after: { a: 9 }, moved: null },
    { what: 'nobody was asked again', before: { a: 10 }, after: {}, moved: null },
  ])('$what: $moved', ({ before, after, moved }) => {
    expect(tell({ before, after })).toMatchObject({ moved });
  });

  test('to move from one stance is told as to move from the other', () => {
    const there = tell({ before: { a: 5, b: 1 }, after: { a: 1, b: 5 } });
    const back = tell({ before: { a: 1, b: 5 }, after: { a: 5, b: 1 } });
    expect(there['moved']).toBe(back['moved']);
  });

  test('without stances only the evidence is weighed', () => {
    const activity = talkOf({ stances: undefined });
    expect(tellPlay(activity, { activity: 'talk-1', weighs: { b: 3 } })).toEqual({
      before: [],
      after: [],
      moved: null,
      weighs: [
        { id: 'a', hands: 0 },
        { id: 'b', hands: 3 },
      ],
    });
  });
});
