import { describe, expect, test } from 'vitest';
import type { ClaimGrade } from '../../../shared/curriculum/index.ts';
import type { ProblemCode } from '../../../shared/lesson/index.ts';
import type { Library } from '../../../shared/library/index.ts';
import { demoLibrary } from '../../demo.ts';
import {
  claimOf,
  CLASS,
  errorsOf,
  estimate,
  FIRE,
  lessonOf,
  MADE_BY,
  OWN_TRAYS,
  PROSE,
  SMALL,
  STEPS,
  TWO_PITS,
  vouched,
} from './one-block-lessons.ts';

const { curricula } = demoLibrary;

const older: Library = {
  ...demoLibrary,
  sites: demoLibrary.sites.map((site) => ({
    ...site,
    period: { ...site.period, fromBce: 4000, toBce: 3500 },
  })),
};

interface FalseClaim {
  readonly kind: string;
  readonly block: string;
  readonly bands: string;
  readonly outcome: string;
  readonly grade?: ClaimGrade;
  readonly code: ProblemCode;
  /** A claim that is true and stands before it. */
  readonly before?: string;
  readonly library?: Library;
}

const wrongStage = (kind: string, block: string, bands: string, outcome: string): FalseClaim => ({
  kind,
  block,
  bands,
  outcome,
  code: 'claim-wrong-stage',
});

const noEvidence = (kind: string, block: string, bands: string, outcome: string): FalseClaim => ({
  kind,
  block,
  bands,
  outcome,
  code: 'claim-without-evidence',
});

const tooHigh = (
  kind: string,
  block: string,
  bands: string,
  outcome: string,
  grade: ClaimGrade,
): FalseClaim => ({
  kind,
  block,
  bands,
  outcome,
  grade,
  code: 'claim-too-high',
});

const elsewhere = (kind: string, block: string, bands: string, outcome: string): FalseClaim => ({
  kind,
  block,
  bands,
  outcome,
  code: 'claim-of-another-place',
});

// One row a kind of falsehood, each a lesson of its own.
const falsehoods: readonly FalseClaim[] = [
  {
    kind: 'an outcome nobody wrote',
    block: MADE_BY,
    bands: '[7-9]',
    outcome: 'en-hi-ks2-dragons',
    code: 'claim-unknown',
  },
  {
    kind: 'a code of no framework',
    block: MADE_BY,
    bands: '[9-11]',
    outcome: 'SOC 9-99z',
    code: 'claim-unknown',
  },
  {
    kind: 'coins, which a swap is not',
    block: FIRE,
    bands: '[7-9]',
    outcome: 'MNU 1-09a',
    code: 'claim-unknown',
  },
  {
    kind: 'a subject no framework here is asked of',
    block: MADE_BY,
    bands: '[7-9]',
    outcome: 'en-mu-ks2-listen',
    code: 'claim-unknown',
  },
  {
    kind: 'the same outcome twice',
    block: MADE_BY,
    bands: '[7-9]',
    outcome: 'MNU 1-20b',
    before: 'MNU 1-20b',
    code: 'claim-repeated',
  },
  {
    kind: 'the same outcome by another spelling of its code',
    block: MADE_BY,
    bands: '[7-9]',
    outcome: 'mnu120b',
    before: 'MNU 1-20b',
    code: 'claim-repeated',
  },
  {
    kind: 'the history of another people',
    block: MADE_BY,
    bands: '[11-14]',
    outcome: 'AC9HH7K03',
    code: 'claim-of-another-people',
  },
  {
    kind: 'the heritage of another people',
    block: MADE_BY,
    bands: '[11-14]',
    outcome: 'AC9HH7K07',
    code: 'claim-of-another-people',
  },
  {
    kind: 'another people’s country and place',
    block: TWO_PITS,
    bands: '[9-11]',
    outcome: 'AC9HS4K01',
    code: 'claim-of-another-people',
  },
  elsewhere(
    'a local study of an invented place',
    vouched(TWO_PITS, 'local'),
    '[7-9]',
    'en-hi-ks2-local-study',
  ),
  elsewhere(
    'people and places of one’s own locality, invented',
    vouched(SMALL, 'local'),
    '[5-7]',
    'en-hi-ks1-locality',
  ),
  elsewhere('an object from Scotland', vouched(MADE_BY, 'scotland-object'), '[7-9]', 'SOC 1-02a'),
  elsewhere('Stone Age Ireland', vouched(STEPS, 'ireland-periods'), '[9-11]', 'ie-hi-34-stone-age'),
  elsewhere(
    'fieldwork on a site nobody can visit',
    vouched(MADE_BY, 'on-site-record'),
    '[7-9]',
    'en-ge-ks2-fieldwork',
  ),
  wrongStage('an older stage, England', SMALL, '[5-7]', 'en-hi-ks2-sources'),
  wrongStage('a younger stage, England', MADE_BY, '[11-14]', 'en-hi-ks1-find-out'),
  wrongStage('a Reception goal at key stage 2', MADE_BY, '[7-9]', 'en-eyfs-number-to-10'),
  wrongStage('a key stage 2 outcome in Reception', SMALL, '[4-5]', 'en-hi-ks2-sources'),
  wrongStage('another level, Scotland', estimate('number'), '[9-11]', 'MNU 4-01a'),
  wrongStage('another progression step, Wales', MADE_BY, '[11-14]', 'wal-hum-wm1-ps2-sort'),
  wrongStage('another key stage, Northern Ireland', TWO_PITS, '[11-14]', 'ni-ma-ks2-mean-range'),
  wrongStage('another class, Ireland', STEPS, '[9-11]', 'ie-hi-inf-sequence'),
  wrongStage(
    'another grade, United States mathematics',
    estimate('number', 'axe-mass'),
    '[11-14]',
    '3.MD.A.2',
  ),
  wrongStage('another grade, United States science', MADE_BY, '[11-14]', '2-PS1-1'),
  wrongStage('another grade, United States social studies', SMALL, '[5-7]', 'D2.His.13.6-8'),
  wrongStage('another year, Australia', MADE_BY, '[11-14]', 'AC9S3U02'),
  wrongStage('another level, New Zealand', FIRE, '[11-14]', 'nz-ss-l2-economic-choices'),
  wrongStage('another grade, Ontario', TWO_PITS, '[5-7]', 'ca-on-ss-4-early-societies'),
  wrongStage('the mean before it is met', estimate('number'), '[7-9]', 'en-ma-y6-mean'),
  wrongStage('ratio notation before it is met', FIRE, '[9-11]', 'en-ma-ks3-ratio-notation'),
  {
    kind: 'fractions before they are met',
    block: vouched(TWO_PITS, 'fraction-of-pit'),
    bands: '[5-7]',
    outcome: 'MNU 1-07a',
    code: 'claim-beyond-band',
  },
  tooHigh(
    'what is explained, called practised',
    vouched(MADE_BY, 'soils'),
    '[7-9]',
    'en-sc-y3-soils',
    'practised',
  ),
  tooHigh(
    'pit fills, called rock layers and practised',
    vouched(TWO_PITS, 'layers-natural'),
    '[9-11]',
    '4-ESS1-1',
    'practised',
  ),
  tooHigh(
    'what another kind of activity meets in passing',
    vouched(MADE_BY, 'fossil-present'),
    '[7-9]',
    'en-sc-y3-fossils',
    'taught',
  ),
  tooHigh(
    'a figure worked out for the pupil, called their own work',
    estimate('number'),
    '[7-9]',
    'MNU 1-01a',
    'practised',
  ),
  tooHigh(
    'a guess checked, called accuracy chosen',
    estimate('number'),
    '[9-11]',
    'en-ma-y6-estimate-accuracy',
    'taught',
  ),
  tooHigh('a chain of swaps, called a problem in several steps', FIRE, '[9-11]', '4.OA.A.3', 'practised'),
  noEvidence('no activity at all', PROSE, '[7-9]', 'en-hi-ks2-sources'),
  noEvidence('another kind of activity than is needed', MADE_BY, '[7-9]', 'en-ma-y3-durations'),
  noEvidence('rocks, where things are sorted by making', MADE_BY, '[7-9]', 'en-sc-y3-rocks'),
  noEvidence('a rule of sorting, where trays are the pupils’ own', OWN_TRAYS, '[5-7]', 'MNU 0-20b'),
  noEvidence('two pits compared, where there is one', MADE_BY, '[7-9]', 'en-ma-y3-how-many-more'),
  noEvidence('periods, where steps of one making are laid', STEPS, '[7-9]', 'en-hi-ks2-chronology'),
  noEvidence('talk in a group nobody vouched for', MADE_BY, '[7-9]', 'en-en-y16-listen'),
  noEvidence('a table of counts nobody vouched for', TWO_PITS, '[7-9]', 'en-ma-y3-bar-charts'),
  noEvidence('a fossil nobody holds', MADE_BY, '[7-9]', 'en-sc-y3-fossils'),
  noEvidence(
    'counting to ten, with thirty-one to count',
    vouched(TWO_PITS, 'count-small'),
    '[4-5]',
    'en-eyfs-compare-quantities',
  ),
  {
    ...noEvidence(
      'dates outside the framework’s own limits',
      vouched(TWO_PITS, 'after-3000-bce'),
      '[9-11]',
      'ca-on-ss-4-early-societies',
    ),
    library: older,
  },
  noEvidence('a mass, where hours are asked', estimate('number'), '[7-9]', '3.MD.A.2'),
  noEvidence('a length, where hours are asked', estimate('number'), '[7-9]', '2.MD.A.3'),
  noEvidence('a unit chosen, where it is given', estimate('number'), '[7-9]', 'en-ma-y3-time-units'),
  noEvidence(
    'units turned into others, where none are',
    estimate('number'),
    '[9-11]',
    'en-ma-y5-time-conversion',
  ),
  noEvidence('rounding, where none is asked', estimate('number'), '[7-9]', 'en-ma-y4-rounding'),
  noEvidence(
    'inverse operations, where none are asked',
    estimate('number'),
    '[7-9]',
    'en-ma-y3-estimate-check',
  ),
  noEvidence('a mean, where none is worked out', estimate('number'), '[9-11]', 'en-ma-y6-mean'),
  noEvidence('per cent, where none is asked', TWO_PITS, '[9-11]', 'en-ma-y5-percent'),
  noEvidence('a probability, where none is asked', estimate('interval'), '[11-14]', 'en-ma-ks3-probability'),
  noEvidence('ratio notation, where none is written', FIRE, '[11-14]', 'en-ma-ks3-ratio-notation'),
  noEvidence(
    'averages and spread, where one value is asked',
    estimate('interval'),
    '[11-14]',
    'en-ma-ks3-averages-spread',
  ),
  noEvidence('a scatter graph, where none is plotted', estimate('interval'), '[11-14]', 'en-ma-ks3-scatter'),
  noEvidence('a rate for one, where none is asked', estimate('number'), '[9-11]', 'en-ma-y5-simple-rates'),
  noEvidence('a rate of exchange, where amounts are only offered', FIRE, '[7-9]', 'en-ma-y3-scaling'),
  noEvidence('unequal shares, where nothing is shared', FIRE, '[9-11]', 'en-ma-y6-unequal-sharing'),
  noEvidence('halves, where nothing is halved', FIRE, '[5-7]', 'en-ma-y1-half-quarter'),
  noEvidence(
    'an interval, where one number is asked',
    estimate('number'),
    '[11-14]',
    'en-ma-ks3-error-interval',
  ),
  noEvidence('times compared, where a number is asked', estimate('number'), '[7-9]', 'en-ma-y3-durations'),
  noEvidence(
    'what only an older band is asked',
    estimate('{ 7-9: choose, 9-11: number }'),
    '[7-9, 9-11]',
    'MNU 1-01a',
  ),
  noEvidence('what money would change, where a class reads of none', CLASS, '[11-14]', 'D2.Eco.5.6-8'),
  noEvidence('a chain of swaps, where a class swaps at will', CLASS, '[9-11]', '4.OA.A.3'),
  {
    kind: 'the lead’s word for what the file itself shows',
    block: vouched(MADE_BY, 'rocks'),
    bands: '[7-9]',
    outcome: 'en-sc-y3-rocks',
    code: 'vouch-needless',
  },
  {
    kind: 'the lead’s word for what nobody has heard of',
    block: vouched(MADE_BY, 'wonder'),
    bands: '[7-9]',
    outcome: 'en-sc-y3-rocks',
    code: 'word-unknown',
  },
];

describe('a lesson with a false claim', () => {
  test.each(falsehoods)(
    '$kind: $outcome',
    ({ block, bands, outcome, grade = 'practised', code, before, library }) => {
      const earlier = before === undefined ? [] : [claimOf(before, 'practised')];
      const text = lessonOf(block, bands, [...earlier, claimOf(outcome, grade)]);
      const { plan, errors } = errorsOf(text, library ?? demoLibrary);
      expect(errors.map((problem) => problem.code)).toEqual([code]);
      expect(plan).toBeNull();
      const [problem] = errors;
      const claimLine =
        text.split('\n').findIndex((line) => line.includes(`outcome: ${outcome},`)) +
        1 +
        earlier.length * (before === outcome ? 1 : 0);
      if (code.startsWith('claim-')) expect(problem?.from.line).toBe(claimLine);
      expect(problem?.mend).not.toBe('');
    },
  );

  test('and without it compiles: nothing else is wrong', () => {
    const others = falsehoods.filter(({ code }) => code.startsWith('claim-'));
    for (const { kind, block, bands, before, library } of others) {
      const claims = before === undefined ? [] : [claimOf(before, 'practised')];
      const { plan, errors } = errorsOf(lessonOf(block, bands, claims), library ?? demoLibrary);
      expect({ kind, errors, isPlan: plan !== null }).toEqual({ kind, errors: [], isPlan: true });
    }
  });

  test('at least thirty kinds, of every code there is for claims, in every framework', () => {
    const kinds = new Set(falsehoods.map(({ kind }) => kind));
    expect(kinds.size).toBe(falsehoods.length);
    expect(kinds.size).toBeGreaterThanOrEqual(30);
    expect(
      [...new Set(falsehoods.map(({ code }) => code))].filter((code) => code.startsWith('claim-')).toSorted(),
    ).toEqual([
      'claim-beyond-band',
      'claim-of-another-people',
      'claim-of-another-place',
      'claim-repeated',
      'claim-too-high',
      'claim-unknown',
      'claim-without-evidence',
      'claim-wrong-stage',
    ]);
    const met = curricula.frameworks.filter(({ outcomes }) =>
      outcomes.some(({ id }) => falsehoods.some(({ outcome }) => outcome === id)),
    );
    expect(met.map(({ id }) => id)).toEqual(curricula.frameworks.map(({ id }) => id));
    console.log(
      `${kinds.size} kinds of false claim, each a lesson of its own, all caught, in ${met.length} frameworks`,
    );
  });
});
