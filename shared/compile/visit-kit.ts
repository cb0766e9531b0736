import { CARD_PARTS, PUPIL_PARTS, sheetsOf } from '../activities/index.ts';
import { youngestAge } from '../library/bands.ts';
import {
  edgeAtStation,
  plainSituation,
  properStation,
  stationRule,
  type EdgeClass,
  type KitList,
  type SafetyRules,
} from '../safety/index.ts';
import type { PieceIs } from '../activities/scorers.ts';
import { handlingTables } from './handling-tables.ts';
import { lessonReport, lessonSetting } from './lesson-report.ts';
import type { Plan } from './plan.ts';

/** Children at one tray, and pupils at one set of cards. ASM; the tray's two stand in the hazards file. */
const PAIR = 2;
/** Stations whose kit holds this list hand pieces round over trays. */
const HANDLING = 'kit-handling';

/** What is counted for a visit, in the order it is packed. */
export const KIT_THINGS = [
  'pupil-sheets',
  'pencils',
  'card-sets',
  'answers',
  'station-cards',
  'trays',
  'eye-sets',
  'first-aiders',
] as const;
export type KitThing = (typeof KIT_THINGS)[number];

/** A thing and how many of it, for each size of class asked about. */
export interface KitCount {
  readonly thing: KitThing;
  /** The activity whose cards they are; null for all else. */
  readonly title: string | null;
  /** How many cards make a set; null for all else. */
  readonly cards: number | null;
  readonly counts: readonly number[];
}

/** All that is carried to a visit. */
export interface VisitKit {
  readonly counts: readonly KitCount[];
  /** Finds or replicas that lie at stations, as types of object. */
  readonly pieces: readonly {
    readonly station: string;
    readonly types: readonly string[];
    readonly edge: EdgeClass | null;
    /** Of a piece on a table of the lesson: the find itself, or a copy of it. */
    readonly is?: PieceIs;
  }[];
  /** Lists of the rules: every visit's, then each station's, each once. */
  readonly lists: readonly KitList[];
}

/**
 * What a lesson and its stations need, summed over the visit. Sheets are for each pupil, cards for each pair, trays for
 * each pair at a handling station; eye protection and first aiders are what the safety rules reckon.
 *
 * @param sizes Pupils in the classes asked about.
 * @param frameworks For the adults, who each carry the answers.
 * @example visitKit(rules, plan, [10, 30], ['england-visits']).counts.find(({ thing }) => thing === 'pencils')?.counts // [10, 30]
 */
export function visitKit(
  rules: SafetyRules,
  plan: Plan,
  sizes: readonly number[],
  frameworks: readonly string[],
): VisitKit {
  const stated = plan.visit?.stations ?? [];
  const stations = [...stated, ...handlingTables(plan)].map((station) => properStation(rules, station));
  const reports = sizes.map((pupils) =>
    lessonReport(
      rules,
      plan,
      plainSituation(pupils, youngestAge(plan.bands), frameworks, lessonSetting(plan)),
    ),
  );
  const sheets = plan.activities.flatMap(sheetsOf);
  const plain = (thing: KitThing, counts: readonly number[]): KitCount => ({
    thing,
    title: null,
    cards: null,
    counts,
  });
  const pupilSheets = sheets.filter(({ part }) => PUPIL_PARTS.some((each) => each === part)).length;
  const cardSets = sheets.flatMap((sheet): readonly KitCount[] =>
    'cards' in sheet && CARD_PARTS.some((each) => each === sheet.part)
      ? [
          {
            thing: 'card-sets',
            title: sheet.title,
            cards: sheet.cards.length,
            // A class that swaps as a whole shares one deal.
            counts: sizes.map((pupils) => (sheet.part === 'want-cards' ? 1 : Math.ceil(pupils / PAIR))),
          },
        ]
      : [],
  );
  const traysFor = (pupils: number): number =>
    stations
      .filter(({ kind }) => stationRule(rules, kind).kit.includes(HANDLING))
      .reduce((sum, { childrenAtOnce }) => sum + Math.ceil(Math.min(childrenAtOnce, pupils) / PAIR), 0);
  const cards = plan.activities.length + stated.length;
  const counts = [
    plain('pupil-sheets', pupilSheets === 0 ? [] : sizes),
    plain('pencils', sizes),
    ...cardSets,
    plain(
      'answers',
      reports.map(({ adults }) => adults.totalAdults),
    ),
    plain(
      'station-cards',
      sizes.map(() => cards),
    ),
    plain('trays', sizes.map(traysFor)),
    plain(
      'eye-sets',
      reports.map(({ adults }) => adults.eyeSetsNeeded),
    ),
    plain(
      'first-aiders',
      reports.map(({ adults }) => adults.firstAiders),
    ),
  ];
  return {
    counts: counts.filter(({ counts: each }) => each.some((count) => count > 0)),
    pieces: [
      ...stations
        .filter(({ finds }) => (finds ?? []).length > 0)
        .map((station) => ({
          station: stationRule(rules, station.kind).name,
          types: station.finds ?? [],
          edge: edgeAtStation(rules, station),
        })),
      ...sheets.flatMap((sheet) =>
        sheet.part === 'handle-notes'
          ? sheet.pieces.map(({ is, edge, drawing }) => ({
              station: sheet.title,
              types: [drawing.objectType],
              edge,
              is,
            }))
          : [],
      ),
    ],
    lists: reports[0]?.kit ?? [],
  };
}
