import { standsAt, stationRule, type Adults } from './adults.ts';
import { edgeAtStation, mayMeet } from './edges.ts';
import type { RefusalOutcome, SafetyRules, StationRule } from './rules.ts';
import type { Situation, StationUse } from './situation.ts';
import { USUAL_EXPOSURE, type Exposure, type Setting, type StationKind } from './vocabulary.ts';

/** A refusal found, with the station it was found at; -1 where it is of the whole visit. */
export interface Refusal {
  readonly id: string;
  readonly outcome: RefusalOutcome;
  readonly station: number;
  readonly say: string;
  readonly mend: string;
}

/** Nearer to an open edge than this, in metres, nobody stands: ours (ASM). */
const METRES_FROM_EDGE = 2;
/** More visitors than this are beyond the older event figure: first 3000, Cardiff Council, Bute Park event guide, 2020. */
const MOST_ATTENDANCE = 3000;
const FEWEST_SUPERVISORS = 2;

/** Every refusal there is: the rules have a row for each. */
export const REFUSAL_IDS = Array.from({ length: 22 }, (_, index) => `X${String(index + 1).padStart(2, '0')}`);

const WASHING_STATIONS: readonly StationKind[] = [
  'mock-dig',
  'animal-materials',
  'pigment',
  'sharp-handling',
  'blunt-handling',
  'site-tour',
];
const EDGED_STATIONS: readonly StationKind[] = ['knapping-demo', 'hafting-demo', 'sharp-handling'];
const MAY_BE_A_SCHOOL: readonly Setting[] = ['classroom', 'hall', 'outdoors', 'open-sided-shelter'];
const WORKS_STONE: readonly StationKind[] = ['knapping-demo', 'wet-grinding-demo', 'hafting-demo'];

type Places = Readonly<Record<string, string | number>>;
type Found = { readonly id: string; readonly station: number; readonly places: Places };

/** How near a child of an age comes to a piece that is too sharp for it; null where no piece there is. */
function exposureTooNear(rules: SafetyRules, station: StationUse, age: number): Exposure | null {
  const { pieces = [], ...others } = station;
  const edge = edgeAtStation(rules, others);
  const hasOthers =
    edge !== null && (pieces.length === 0 || others.finds !== undefined || others.edgeClass !== undefined);
  const met = [...pieces, ...(hasOthers ? [{ edge, exposure: station.exposure ?? USUAL_EXPOSURE }] : [])];
  return (
    met.find(({ edge: sharp, exposure }) => !mayMeet(rules.minimumAges, sharp, exposure, age))?.exposure ??
    null
  );
}

function atStation(
  rules: SafetyRules,
  situation: Situation,
  station: StationUse,
  index: number,
): readonly Found[] {
  const rule = stationRule(rules, station.kind);
  const tooNear = exposureTooNear(rules, station, situation.youngest);
  const isDry = station.dry === true && WORKS_STONE.includes(station.kind);
  const checks: readonly (readonly [boolean, string, Places?])[] = [
    [station.pupilsFlake === true, 'X01'],
    [station.pupilsSwing === true, 'X02'],
    [isDry, 'X03'],
    [station.pupilsGrind === true, 'X04'],
    [tooNear !== null, 'X05', { exposure: (tooNear ?? '').replace('-', ' ') }],
    [station.poweredTool === true, 'X06'],
    [
      !rule.settings.includes(situation.setting),
      'X07',
      { station: rule.name, setting: settingName(situation.setting) },
    ],
    [(rule.ropeM ?? 0) > standsAt(rule, station), 'X12', { rope: rule.ropeM ?? 0 }],
    [
      station.plantWorkingOnRoute === true ||
        (station.metresToUnbarrieredEdge ?? METRES_FROM_EDGE) < METRES_FROM_EDGE,
      'X13',
    ],
    [station.pupilsHeat === true, 'X15'],
    [station.pupilsThrow === true, 'X16'],
    [station.childrenAtOnce > rule.maximumAtOnce, 'X19', { max: rule.maximumAtOnce, station: rule.name }],
    [station.rawMaterials === true, 'X22'],
  ];
  return checks.flatMap(([isFound, id, places]) =>
    isFound ? [{ id, station: index, places: places ?? {} }] : [],
  );
}

const settingName = (setting: Setting): string => `the setting "${setting.replaceAll('-', ' ')}"`;

function overVisit(rules: SafetyRules, situation: Situation, adults: Adults): readonly Found[] {
  const { stations, supervisorsAvailable, practitionersAvailable, firstAiders } = situation;
  const isShort = (available: number | null, needed: number): boolean =>
    available !== null && available < needed;
  const stationRules: readonly StationRule[] = stations.map(({ kind }) => stationRule(rules, kind));
  const needing = stationRules.find(({ practitioners }) => practitioners > 0);
  const has = (kinds: readonly StationKind[]): boolean => stations.some(({ kind }) => kinds.includes(kind));
  const zone = Math.max(0, ...stationRules.map(({ eyeZoneM }) => eyeZoneM));
  const carriesEdges =
    situation.flags.includes('edged-tools-carried') ||
    situation.flags.includes('loan-box') ||
    has(EDGED_STATIONS);
  const checks: readonly (readonly [boolean, string, Places?])[] = [
    [isShort(practitionersAvailable, adults.practitioners), 'X08', { station: needing?.name ?? '' }],
    [isShort(supervisorsAvailable, FEWEST_SUPERVISORS), 'X09'],
    [
      isShort(supervisorsAvailable, adults.supervisors),
      'X10',
      { n: adults.supervisors - (supervisorsAvailable ?? 0) },
    ],
    [isShort(situation.eyeSets, adults.eyeSetsNeeded), 'X11', { eyeZone: zone }],
    [!situation.handwashing && has(WASHING_STATIONS), 'X14'],
    [isShort(firstAiders, adults.firstAiders) || !situation.kitTicked, 'X17'],
    [situation.asksForPersonalData, 'X18'],
    [(situation.openDay && situation.attendance > MOST_ATTENDANCE) || situation.parts.length > 0, 'X20'],
    [!situation.edgedLetter && carriesEdges && MAY_BE_A_SCHOOL.includes(situation.setting), 'X21'],
  ];
  return checks.flatMap(([isFound, id, places]) =>
    isFound ? [{ id, station: -1, places: places ?? {} }] : [],
  );
}

const fill = (text: string, places: Places): string =>
  text.replaceAll(/\{(\w+)\}/g, (whole, place: string) => String(places[place] ?? whole));

/**
 * Every refusal, hold and referral of a situation, in the order of their ids; the numbers stand whatever is refused.
 *
 * @throws RangeError where the rules lack a refusal's own row.
 */
export function refusalsOf(rules: SafetyRules, situation: Situation, adults: Adults): readonly Refusal[] {
  const found = [
    ...situation.stations.flatMap((station, index) => atStation(rules, situation, station, index)),
    ...overVisit(rules, situation, adults),
  ];
  return found
    .toSorted((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : a.station - b.station))
    .map(({ id, station, places }): Refusal => {
      const rule = rules.refusals.find((each) => each.id === id);
      if (rule === undefined) throw new RangeError(`no rule ${id}`);
      return { id, outcome: rule.outcome, station, say: fill(rule.say, places), mend: rule.mend };
    });
}
