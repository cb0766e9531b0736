import { describe, expect, test } from 'vitest';
import { judgeClaim, type ClaimGrade, type LessonFacts } from '../../../shared/curriculum/index.ts';
import { demoLessons, demoLibrary } from '../../demo.ts';
import { compileLesson } from '../../../shared/compile/index.ts';

const { curricula } = demoLibrary;
const [nothing, invented, real]: readonly [readonly string[], boolean, boolean] = [[], true, false];

/** A lesson of one activity, as plain facts. */
const lesson = (
  bands: LessonFacts['bands'],
  kind: string,
  met: readonly string[] = nothing,
  more: Partial<LessonFacts & { vouched: readonly string[]; things: number }> = {},
): LessonFacts => ({
  bands,
  isInvented: more.isInvented ?? invented,
  fromBce: more.fromBce ?? 2900,
  toBce: more.toBce ?? 2400,
  activities: [
    { id: `${kind}-1`, kind, title: 'One', met, vouched: more.vouched ?? [], things: more.things ?? 10 },
  ],
});

type Row = readonly [
  falsehood: string,
  outcome: string,
  grade: ClaimGrade,
  facts: LessonFacts,
  fault: string,
];

// Each row is one way of claiming what is not so; the fault is what a teacher of that framework would say.
const falsehoods: readonly Row[] = [
  ['an outcome nobody wrote', 'en-hi-ks2-dragons', 'touched', lesson(['7-9'], 'sort'), 'unknown'],
  ['a code from no framework', 'SOC 9-99z', 'practised', lesson(['9-11'], 'sort'), 'unknown'],
  [
    'First Nations cultures with European finds',
    'AC9HH7K03',
    'touched',
    lesson(['11-14'], 'sort', ['finds-as-evidence']),
    'another-people',
  ],
  [
    'First Nations heritage with European finds',
    'AC9HH7K07',
    'taught',
    lesson(['11-14'], 'talk'),
    'another-people',
  ],
  [
    'Country and Place with European finds',
    'AC9HS4K01',
    'practised',
    lesson(['9-11'], 'compare', ['periods']),
    'another-people',
  ],
  [
    'local study with an invented site',
    'en-hi-ks2-local-study',
    'practised',
    lesson(['7-9'], 'compare', [], { vouched: ['local'] }),
    'another-place',
  ],
  [
    'a local place at key stage 1, invented',
    'en-hi-ks1-locality',
    'taught',
    lesson(['5-7'], 'talk', [], { vouched: ['local'] }),
    'another-place',
  ],
  [
    'an object from Scotland, invented',
    'SOC 1-02a',
    'practised',
    lesson(['7-9'], 'handle', [], { vouched: ['scotland-object'] }),
    'another-place',
  ],
  [
    'local evidence in Scotland, invented',
    'SOC 1-03a',
    'practised',
    lesson(['7-9'], 'sort', [], { vouched: ['local-evidence'] }),
    'another-place',
  ],
  [
    'Stone Age Ireland, invented',
    'ie-hi-34-stone-age',
    'practised',
    lesson(['9-11'], 'order', [], { vouched: ['ireland-periods'] }),
    'another-place',
  ],
  [
    'fieldwork on an invented site',
    'en-ge-ks2-fieldwork',
    'practised',
    lesson(['7-9'], 'handle', [], { vouched: ['on-site-record'] }),
    'another-place',
  ],
  [
    'key stage 2 prehistory for Reception',
    'en-hi-ks2-stone-to-iron',
    'practised',
    lesson(['4-5'], 'order', ['periods-britain']),
    'wrong-stage',
  ],
  [
    'key stage 2 sources at key stage 1',
    'en-hi-ks2-sources',
    'practised',
    lesson(['5-7'], 'sort', ['finds-as-evidence']),
    'wrong-stage',
  ],
  [
    'key stage 1 history at key stage 3',
    'en-hi-ks1-find-out',
    'practised',
    lesson(['11-14'], 'sort', ['finds-as-evidence']),
    'wrong-stage',
  ],
  [
    'a Reception goal for seven-year-olds',
    'en-eyfs-number-to-10',
    'practised',
    lesson(['7-9'], 'sort', [], { vouched: ['count-small'] }),
    'wrong-stage',
  ],
  ['the mean in Year 4', 'en-ma-y6-mean', 'practised', lesson(['7-9'], 'estimate', ['mean']), 'wrong-stage'],
  [
    'ratio notation in Year 6',
    'en-ma-ks3-ratio-notation',
    'practised',
    lesson(['9-11'], 'barter', ['ratio-notation']),
    'wrong-stage',
  ],
  [
    'probability in Year 6',
    'en-ma-ks3-probability',
    'practised',
    lesson(['9-11'], 'estimate', ['probability']),
    'wrong-stage',
  ],
  [
    'US grade 7 probability in grade 5',
    '7.SP.C.5',
    'practised',
    lesson(['9-11'], 'estimate', ['probability']),
    'wrong-stage',
  ],
  [
    'a US middle school expectation in grade 2',
    'MS-ETS1-2',
    'practised',
    lesson(['7-9'], 'compare', ['design-criteria']),
    'wrong-stage',
  ],
  [
    'C3 for grades 6-8 in grade 1',
    'D2.His.13.6-8',
    'practised',
    lesson(['5-7'], 'compare', ['source-limits']),
    'wrong-stage',
  ],
  [
    'Scottish fourth level at first level',
    'MNU 4-01a',
    'practised',
    lesson(['7-9'], 'estimate', ['interval']),
    'wrong-stage',
  ],
  [
    'fractions of a pit before fractions',
    'MNU 1-07a',
    'practised',
    lesson(['5-7'], 'compare', [], { vouched: ['fraction-of-pit'] }),
    'beyond-band',
  ],
  [
    'rates by the school’s own scale-up at ages 5 to 7',
    'MNU 1-03a',
    'practised',
    lesson(['5-7'], 'estimate', ['scale-up']),
    'beyond-band',
  ],
  [
    'swap rates at ages 5 to 7',
    'MNU 1-03a',
    'practised',
    lesson(['5-7'], 'barter', ['exchange-rate']),
    'beyond-band',
  ],
  [
    'rocks, with no rocks in the sort',
    'en-sc-y3-rocks',
    'practised',
    lesson(['7-9'], 'sort', ['finds-as-evidence']),
    'no-evidence',
  ],
  [
    'rocks by the lead’s word alone',
    'en-sc-y3-rocks',
    'practised',
    lesson(['7-9'], 'sort', [], { vouched: ['rocks'] }),
    'no-evidence',
  ],
  [
    'durations from a sort',
    'en-ma-y3-durations',
    'practised',
    lesson(['7-9'], 'sort', ['criteria-named']),
    'no-evidence',
  ],
  ['money from a swap', 'MNU 1-09a', 'practised', lesson(['7-9'], 'barter', ['exchange-rate']), 'unknown'],
  [
    'fossils without a fossil',
    'en-sc-y3-fossils',
    'taught',
    lesson(['7-9'], 'handle', ['real-objects']),
    'no-evidence',
  ],
  [
    'counting to ten with thirty finds',
    'en-eyfs-number-to-10',
    'practised',
    lesson(['4-5'], 'sort', [], { vouched: ['count-small'], things: 30 }),
    'no-evidence',
  ],
  [
    'early societies of Ontario with older finds',
    'ca-on-ss-4-early-societies',
    'practised',
    lesson(['9-11'], 'compare', [], {
      vouched: ['after-3000-bce'],
      fromBce: 4000,
      toBce: 3500,
      isInvented: real,
    }),
    'no-evidence',
  ],
  [
    'an outcome with no activity at all',
    'en-hi-ks2-sources',
    'practised',
    { ...lesson(['7-9'], 'sort'), activities: [] },
    'no-evidence',
  ],
  [
    'a swap with no rate asked for',
    'en-ma-y3-scaling',
    'practised',
    lesson(['7-9'], 'barter', ['chain-swap']),
    'no-evidence',
  ],
  ['group talk nobody vouched for', 'en-en-y16-listen', 'practised', lesson(['7-9'], 'talk'), 'no-evidence'],
  [
    'watching a flint knapper, called practice',
    '4-PS3-3',
    'practised',
    lesson(['9-11'], 'talk', [], { vouched: ['demo-knapping'] }),
    'grade-too-high',
  ],
  [
    'a story told, called practice',
    'en-eyfs-past-story',
    'practised',
    lesson(['4-5'], 'talk', [], { vouched: ['story'] }),
    'grade-too-high',
  ],
  [
    'soil explained, called practice',
    'en-sc-y3-soils',
    'practised',
    lesson(['7-9'], 'sort', [], { vouched: ['soils'] }),
    'grade-too-high',
  ],
  [
    'rocks met while ordering, called taught',
    'AC9S3U02',
    'taught',
    lesson(['7-9'], 'order', ['rocks']),
    'grade-too-high',
  ],
  [
    'pit fills called rock layers',
    '4-ESS1-1',
    'practised',
    lesson(['9-11'], 'compare', [], { vouched: ['layers-natural'] }),
    'grade-too-high',
  ],
];

// What the same frameworks do allow: none may be refused.
const truths: readonly (readonly [truth: string, outcome: string, grade: ClaimGrade, facts: LessonFacts])[] =
  [
    [
      'finds as evidence at key stage 2',
      'en-hi-ks2-sources',
      'practised',
      lesson(['7-9'], 'sort', ['finds-as-evidence']),
    ],
    [
      'three rocks sorted by material',
      'en-sc-y3-rocks',
      'practised',
      lesson(['7-9'], 'sort', ['materials', 'rocks']),
    ],
    ['the mean in Year 6', 'en-ma-y6-mean', 'practised', lesson(['9-11'], 'estimate', ['mean'])],
    [
      'mean and range at key stage 2 in Northern Ireland',
      'ni-ma-ks2-mean-range',
      'practised',
      lesson(['9-11'], 'compare', ['mean-range']),
    ],
    [
      'hours to minutes in Year 4',
      'en-ma-y4-time-problems',
      'practised',
      lesson(['7-9'], 'estimate', ['convert-time']),
    ],
    [
      'ratio notation at key stage 3',
      'en-ma-ks3-ratio-notation',
      'practised',
      lesson(['11-14'], 'barter', ['ratio-notation']),
    ],
    ['US grade 7 probability', '7.SP.C.5', 'practised', lesson(['11-14'], 'estimate', ['probability'])],
    [
      'a real site in the school’s own place',
      'en-hi-ks2-local-study',
      'practised',
      lesson(['7-9'], 'compare', [], { vouched: ['local'], isInvented: real }),
    ],
    [
      'a demonstration watched',
      '4-PS3-3',
      'taught',
      lesson(['9-11'], 'talk', [], { vouched: ['demo-knapping'] }),
    ],
    [
      'twenty things counted in a US kindergarten',
      'K.CC.B.5',
      'practised',
      lesson(['5-7'], 'sort', [], { vouched: ['count-small'], things: 20 }),
    ],
    [
      'a code copied without its hyphen',
      'MNU 120b',
      'practised',
      lesson(['7-9'], 'sort', ['criteria-named']),
    ],
    [
      'a lower grade than was earned',
      'en-hi-ks2-sources',
      'touched',
      lesson(['7-9'], 'sort', ['finds-as-evidence']),
    ],
    ['rocks met while ordering, touched', 'AC9S3U02', 'touched', lesson(['7-9'], 'order', ['rocks'])],
  ];

describe('a claim that is not so', () => {
  test.each(falsehoods)('%s: %s', (_, outcome, grade, facts, fault) => {
    expect(judgeClaim(curricula, facts, { outcome, grade }).fault?.fault).toBe(fault);
  });

  test('at least thirty ways are tried, in nine frameworks or more', () => {
    const names = falsehoods.map(
      ([, outcome, grade, facts]) => judgeClaim(curricula, facts, { outcome, grade }).framework?.id,
    );
    expect(new Set(falsehoods.map(([falsehood]) => falsehood)).size).toBeGreaterThanOrEqual(30);
    expect(new Set(names.filter((name) => name !== undefined)).size).toBeGreaterThanOrEqual(9);
  });
});

describe('a claim that is so', () => {
  test.each(truths)('%s: %s', (_, outcome, grade, facts) => {
    const judged = judgeClaim(curricula, facts, { outcome, grade });
    expect(judged.fault).toBeNull();
    expect(judged.evidence.length).toBeGreaterThan(0);
  });

  test('every claim of the demo lessons is earned, in four frameworks at least', () => {
    const claims = demoLessons.flatMap(
      ({ id, file, text }) => compileLesson(file, text, demoLibrary, id).claims,
    );
    expect(claims.length).toBeGreaterThan(9);
    expect(claims.filter(({ fault }) => fault !== null)).toEqual([]);
    expect(new Set(claims.map(({ framework }) => framework?.id)).size).toBeGreaterThanOrEqual(4);
  });
});
