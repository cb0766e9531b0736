import { expect, test } from 'vitest';
import {
  beyondGuessing,
  judge,
  JUDGEMENTS,
  KIND_PLACES,
  kindsOfTwo,
  meanScore,
  recordedPlaces,
  scoreJudgement,
  scoreLikeness,
  scorePlaces,
  type JudgedItem,
  type KindPlace,
} from '../../../shared/assemblage/index.ts';
import { pick, shuffle, stream, uniform, type Stream } from '../../../shared/chance/index.ts';
import { wendleMarsh } from '../../reference/wendle-marsh-presence.ts';

const record = recordedPlaces(kindsOfTwo(wendleMarsh, '3', '4'));
const mean = (turns: number, score: (chance: Stream) => number | null, seed = 'guesses'): number => {
  const chance = stream(seed);
  let total = 0;
  for (let turn = 0; turn < turns; turn += 1) total += score(chance) ?? Number.NaN;
  return total / turns;
};
const saying = (answer: (kind: string) => KindPlace | null) =>
  scorePlaces(
    record,
    new Map(
      [...record.keys()].map((kind) => {
        const said = answer(kind);
        return [kind, said === null ? {} : { [said]: 1 }];
      }),
    ),
  );

test('the record scores 1 and says so kind by kind', () => {
  const score = saying((kind) => record.get(kind) ?? null);
  expect(score).toMatchObject({ score: 1, guess: 0.25, open: 0 });
  expect(score.kinds.every((kind) => kind.isRight === true)).toBe(true);
});

test.each(KIND_PLACES.map((place) => ({ place })))('saying "$place" of every kind scores 0', ({ place }) => {
  expect(saying(() => place).score).toBeCloseTo(0, 12);
});

test('saying nothing scores 0, and every kind stays open', () => {
  expect(saying(() => null)).toMatchObject({ score: 0, open: 22 });
  expect(saying(() => null).kinds[0]?.isRight).toBeNull();
});

test.each([
  { name: 'any place as likely', guess: (chance: Stream) => pick(chance, KIND_PLACES) },
  {
    name: 'mostly the common answer',
    guess: (chance: Stream) => (uniform(chance) < 0.8 ? 'neither' : pick(chance, KIND_PLACES)),
  },
  {
    name: 'half left out',
    guess: (chance: Stream) => (uniform(chance) < 0.5 ? null : pick(chance, KIND_PLACES)),
  },
] as const)('guessing by chance averages 0 within 0.02: $name', ({ guess }) => {
  expect(Math.abs(mean(4000, (chance) => saying(() => guess(chance)).score))).toBeLessThan(0.02);
});

test('the more kinds are truly known, the higher the score', () => {
  const skilled = (skill: number): number =>
    mean(
      500,
      (chance) =>
        saying((kind) => (uniform(chance) < skill ? (record.get(kind) ?? null) : pick(chance, KIND_PLACES)))
          .score,
    );
  const scores = [0, 0.25, 0.5, 0.75, 1].map(skilled);
  for (const [index, score] of scores.slice(1).entries())
    expect(score).toBeGreaterThan((scores[index] ?? 1) + 0.15);
});

test('hands up: half the class right in everything is half of what can be known beyond guessing', () => {
  const said = new Map(
    [...record].map(([kind, place]) => [kind, { [place]: 15, [place === 'both' ? 'neither' : 'both']: 15 }]),
  );
  expect(scorePlaces(record, said).agreement).toBeCloseTo(0.5, 12);
  expect(scorePlaces(record, said).score).toBeCloseTo((0.5 - 0.25) / 0.75, 12);
});

test('where every kind has the same place there is nothing to tell apart', () => {
  const same = new Map([['flake', 'both'], ['charcoal', 'both']] as const); // prettier-ignore
  expect(scorePlaces(same, new Map([['flake', { both: 1 }]]))).toMatchObject({
    score: null,
    reason: 'one-answer',
  });
  expect(beyondGuessing([])).toMatchObject({ score: null, reason: 'no-items' });
});

const likenesses = [0.8, 0.55, 0.36, 0.1];

test.each([
  { name: 'the record itself', said: [0.8, 0.55, 0.36, 0.1], score: 1 },
  { name: 'all too high, in the right order', said: [0.99, 0.9, 0.8, 0.7], score: 1 },
  { name: 'all turned round', said: [0.1, 0.2, 0.3, 0.4], score: -1 },
  { name: 'the middle for all', said: [0.5, 0.5, 0.5, 0.5], score: 0 },
  { name: 'nothing said', said: [null, null, null, null], score: 0 },
  { name: 'one left out: three twos of six kept', said: [0.8, 0.55, null, 0.1], score: 0.5 },
])('how alike, $name: $score', ({ said, score }) => {
  const guesses = likenesses.map((record, pair) => ({ record, said: said[pair] ?? null }));
  expect(scoreLikeness(guesses).score).toBe(score);
});

test('how alike, by chance: averages 0 within 0.02', () => {
  const guess = (chance: Stream): number | null =>
    scoreLikeness(likenesses.map((record) => ({ record, said: Math.round(10 * uniform(chance)) / 10 })))
      .score;
  expect(Math.abs(mean(6000, guess))).toBeLessThan(0.02);
});

test('how alike, pairs as alike in the record may be said in any order', () => {
  const guesses = [0.5, 0.5, 0.1].map((record, pair) => ({ record, said: [0.6, 0.4, 0.2][pair] ?? null }));
  expect(scoreLikeness(guesses)).toMatchObject({ score: 1, twos: 2 });
});

test('one pair alone, or all pairs as alike, cannot be scored; how near is still told', () => {
  expect(scoreLikeness([{ record: 0.8, said: 0.5 }])).toMatchObject({ score: null, reason: 'too-few' });
  expect(scoreLikeness([{ record: 0.8, said: 0.5 }]).apart[0]).toBeCloseTo(-0.3, 12);
  expect(scoreLikeness([{ record: 1, said: 2 }, { record: 1, said: 3 }])).toMatchObject({ score: null, reason: 'all-alike' }); // prettier-ignore
});

test('rarer than once in twenty is hardly chance', () => {
  expect(judge({ chance: 0.014 })).toBe('chance-hardly');
  expect(judge({ chance: 0.05 })).toBe('chance-hardly');
  expect(judge({ chance: 0.24 })).toBe('chance-could');
});

const questions = (
  ['chance-hardly', 'chance-could', 'chance-could', 'chance-hardly', 'chance-could'] as const
).map((truth) => ({ record: truth }));
const judged = (answer: (item: { record: JudgedItem['record'] }) => JudgedItem['record']): JudgedItem[] =>
  questions.map((item) => ({ ...item, before: { 'chance-could': 1 }, after: { [answer(item)]: 1 } }));

test('judged as the record does after looking, and all one way before: a gain of 1', () => {
  const score = scoreJudgement(judged((item) => item.record));
  expect(score.after.score).toBe(1);
  expect(score.before.score).toBe(0);
  expect(score.gain).toBe(1);
});

test.each(JUDGEMENTS.map((judgement) => ({ judgement })))(
  '"$judgement" for everything scores 0',
  ({ judgement }) => {
    expect(scoreJudgement(judged(() => judgement)).after.score).toBe(0);
  },
);

test('judging by a tossed coin averages 0 within 0.02', () => {
  expect(
    Math.abs(mean(6000, (chance) => scoreJudgement(judged(() => pick(chance, JUDGEMENTS))).after.score)),
  ).toBeLessThan(0.02);
});

test('a set of questions whose record is all one way has no score and no gain', () => {
  const score = scoreJudgement([{ record: 'chance-could', before: {}, after: { 'chance-could': 1 } }]);
  expect(score).toMatchObject({ after: { score: null, reason: 'one-answer' }, gain: null });
});

test('parts without a score are left out of the mean', () => {
  expect(meanScore([{ score: 1 }, { score: null }, { score: 0 }])).toBe(0.5);
  expect(meanScore([{ score: null }])).toBeNull();
});

test('the order of what was said does not matter', () => {
  const said = [...record].map(
    ([kind, place]) => [kind, { [kind.length % 2 === 0 ? place : 'both']: 1 }] as const,
  );
  const straight = scorePlaces(record, new Map(said)).score;
  expect(scorePlaces(record, new Map(shuffle(stream('order'), said))).score).toBe(straight);
});
