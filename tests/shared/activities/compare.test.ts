import { describe, expect, test } from 'vitest';
import { recordPlay, score, type ActivityOf } from '../../../shared/activities/index.ts';
import { compileLesson } from '../../../shared/compile/index.ts';
import { demoLibrary } from '../../demo.ts';

const lesson = (block: string): string =>
  `---\ntitle: Test\nsite: wendle-marsh\nbands: [14-16]\nminutes: 30\n---\n\`\`\`compare\ntitle: Test\nminutes: 20\n${block}\n\`\`\`\n`;

const compile = (block: string) => compileLesson('test.md', lesson(block), demoLibrary, 'seed');

function activityOf(block: string): ActivityOf<'compare'> {
  const { plan, problems } = compile(block);
  expect(problems).toEqual([]);
  const activity = plan?.activities[0];
  if (activity?.kind !== 'compare') throw new Error('no comparison');
  return activity;
}

const codes = (block: string): readonly string[] => compile(block).problems.map(({ code }) => code);

const PLACES = 'ask: places\npits: [P3, P4]\nkinds: [pig-jaw, bone-pin, chalk-disc, cattle-bone]';
const SITE = 'pits: [P1, P2, P3, P4, P5, P6, P7, P8, P9]';

describe('two pits of the invented record', () => {
  const activity = activityOf(PLACES);
  const said = (places: Record<string, string | Record<string, number>>) =>
    score(activity, { activity: activity.id, places }).score;

  test('the places are those of the finds table', () => {
    expect(activity.places?.record).toEqual({
      'pig-jaw': 'both',
      'bone-pin': 'both',
      'chalk-disc': 'only-first',
      'cattle-bone': 'only-second',
    });
    expect(activity.places?.offered).toEqual(['both', 'only-first', 'only-second']);
    expect(activity.kinds.find(({ id }) => id === 'cattle-bone')?.counts).toEqual([0, 2]);
  });

  test('one place for everything scores 0, and so does nothing at all', () => {
    const all = (place: string) => Object.fromEntries(activity.kinds.map(({ id }) => [id, place]));
    for (const place of ['both', 'only-first', 'only-second']) expect(said(all(place))).toBeCloseTo(0, 12);
    expect(said({})).toBeCloseTo(0, 12);
  });

  // By hand: of both, 1 of 2; of the two others all. Mean share (1/2 + 1 + 1)/3 = 5/6; beyond a third: (5/6 − 1/3)/(2/3) = 3/4.
  test('one of two wrong among those in both scores three quarters', () => {
    expect(
      said({
        'pig-jaw': 'both',
        'bone-pin': 'only-first',
        'chalk-disc': 'only-first',
        'cattle-bone': 'only-second',
      }),
    ).toBeCloseTo(0.75, 12);
  });

  // By hand: hands 3 of 4 right on one of two: shares (3/4 + 1)/2, 1, 1; mean 23/24; (23/24 − 1/3)/(2/3) = 15/16.
  test('hands count by their share', () => {
    expect(
      said({
        'pig-jaw': { both: 3, 'only-first': 1 },
        'bone-pin': 'both',
        'chalk-disc': 'only-first',
        'cattle-bone': 'only-second',
      }),
    ).toBeCloseTo(0.9375, 12);
  });
});

describe.each(['jaccard', 'dice', 'brainerd-robinson'])('the whole site by %s', (by) => {
  const activity = activityOf(`ask: chance\n${SITE}\nby: ${by}`);
  const pairs = activity.chance?.pairs ?? [];

  test('several pairs of differing likeness are asked, with both answers among them, none near once in twenty', () => {
    expect(pairs.length).toBeGreaterThan(3);
    expect(new Set(pairs.map(({ likeness }) => likeness)).size).toBeGreaterThan(1);
    expect(new Set(pairs.map(({ record }) => record)).size).toBe(2);
    for (const { tally } of pairs) expect(tally.chance > 0.03 && tally.chance < 0.1).toBe(false);
  });

  test('calling everything chance, and every pair half alike, scores 0', () => {
    const each = <Value>(value: Value) => Object.fromEntries(pairs.map(({ id }) => [id, value]));
    const play = { activity: activity.id, likeness: each(0.5), after: each('chance-could') };
    expect(score(activity, play).score).toBeCloseTo(0, 12);
  });

  test('what was said before the shuffles is not scored', () => {
    const record = recordPlay(activity);
    expect(score(activity, { ...record, before: {} }).score).toBeCloseTo(1, 12);
  });
});

test('the site view: pits 3, 5 and 8 share five uncommon kinds; no pair of kinds passes Holm', () => {
  const site = activityOf(`ask: chance\n${SITE}`).chance?.site;
  expect(site?.trio?.pits).toEqual(['P3', 'P5', 'P8']);
  expect(site?.trio?.kinds).toHaveLength(5);
  expect(site?.company.map(({ holm }) => holm)).toEqual([1, 1, 1]);
  expect([...(site?.seriation?.pits ?? [])].toSorted()).toEqual([
    'P1',
    'P2',
    'P3',
    'P4',
    'P5',
    'P6',
    'P7',
    'P8',
    'P9',
  ]);
});

test('later and natural things are not counted', () => {
  const kinds = activityOf(`ask: chance\n${SITE}`).kinds.map(({ id }) => id);
  expect(kinds).toHaveLength(22);
  for (const intruder of ['iron-nail', 'bottle-glass', 'natural-pebble', 'leaf-arrowhead'])
    expect(kinds).not.toContain(intruder);
});

test.each([
  { block: 'ask: places\npits: [P3, P4, P5]', code: 'value-unfit' },
  { block: 'ask: chance\npits: [P3, P4]', code: 'value-unfit' },
  { block: 'ask: places\npits: [P3, P33]', code: 'find-unknown' },
  { block: 'ask: places\npits: [P3, P3]', code: 'pit-repeated' },
  { block: 'ask: places\npits: [P3, P4]\nkinds: [pig-jaw, bone-pim]', code: 'word-unknown' },
  { block: 'ask: places\npits: [P3, P4]\nkinds: [pig-jaw, bone-pin]', code: 'pits-one-answer' },
  { block: 'ask: chance\npits: [P1, P2, P9]', code: 'pits-one-answer' },
])('$block: $code', ({ block, code }) => expect(codes(block)).toEqual([code]));
