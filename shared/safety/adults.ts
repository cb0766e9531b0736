import type { RatioRule, SafetyRules, StationRule } from './rules.ts';
import type { Situation, StationUse } from './situation.ts';
import type { StationKind } from './vocabulary.ts';

/** Two supervisors always: one goes with a hurt child, one stays. NSPCC Learning, September 2023; ours that practitioners are not among them (ASM). */
const FEWEST_SUPERVISORS = 2;
/** First aiders for each thousand people, and the least at any event: Cardiff Council, Bute Park event guide, 2020. */
const FIRST_AIDERS_PER_THOUSAND = 2;
const FEWEST_FIRST_AIDERS = 2;
/** Below this age a paediatric certificate is asked for: early years framework for England, 2017. */
const PAEDIATRIC_UNDER = 5;

/** One step of the reckoning, as data: the words are made elsewhere. */
export type Because =
  | {
      readonly rule: 'ratio';
      readonly framework: string;
      readonly row: RatioRule;
      readonly childrenPerAdult: number;
      readonly children: number;
      readonly adults: number;
    }
  | { readonly rule: 'ratio-silent'; readonly framework: string; readonly age: number }
  | { readonly rule: 'no-framework' }
  | {
      readonly rule: 'station';
      readonly station: StationRule;
      readonly childrenAtOnce: number;
      readonly childrenPerSupervisor: number;
      readonly supervisors: number;
    }
  | {
      readonly rule: 'waiting';
      readonly children: number;
      readonly childrenPerAdult: number;
      readonly supervisors: number;
    }
  | { readonly rule: 'one-to-one'; readonly adults: number }
  | {
      readonly rule: 'decided';
      readonly by: 'ratio' | 'stations' | 'two-at-least';
      readonly supervisors: number;
    }
  | { readonly rule: 'practitioner'; readonly station: StationRule; readonly practitioners: number }
  | {
      readonly rule: 'first-aid';
      readonly firstAiders: number;
      readonly attendance: number | null;
      readonly isPaediatric: boolean;
    };

/** How many adults a situation asks for, and which rule decided. A floor for planning; never "enough". */
export interface Adults {
  readonly ratioAdults: number;
  readonly stationSupervisors: number;
  /** Includes one-to-one adults. */
  readonly supervisors: number;
  readonly practitioners: number;
  readonly totalAdults: number;
  readonly firstAiders: number;
  readonly paediatricFirstAid: boolean;
  readonly eyeSetsNeeded: number;
  readonly because: readonly Because[];
}

/** A station's rule. @throws RangeError where the rules have none for it. */
export function stationRule(rules: Pick<SafetyRules, 'stations'>, kind: StationKind): StationRule {
  const rule = rules.stations.find(({ id }) => id === kind);
  if (rule === undefined) throw new RangeError(`no rule for the station ${kind}`);
  return rule;
}

function childrenPerSupervisor(rule: StationRule, age: number): number {
  const steps = rule.childrenPerSupervisor;
  const step = steps.findLast(({ from }) => age >= from) ?? steps[0];
  if (step === undefined) throw new RangeError(`no supervision figure for ${rule.id}`);
  return step.children;
}

/** The supervisors one station needs for its children. */
const supervisorsAt = (rule: StationRule, childrenAtOnce: number, age: number): number =>
  Math.max(rule.minimumSupervisors, Math.ceil(childrenAtOnce / childrenPerSupervisor(rule, age)));

/** Where the nearest row stands, in metres: at the rope where nobody has said. */
export const standsAt = (rule: StationRule, station: StationUse): number =>
  station.spectatorsAtMetres ?? rule.ropeM ?? 0;

/** The ratios of the chosen frameworks, by the youngest child. */
function ratiosOf(rules: SafetyRules, situation: Situation): readonly Because[] {
  const { children, youngest, frameworks, localChildrenPerAdult } = situation;
  if (frameworks.length === 0) return [{ rule: 'no-framework' }];
  return frameworks.map((framework): Because => {
    const row = rules.ratios.find(
      (rule) => rule.framework === framework && youngest >= rule.ageFrom && youngest <= rule.ageTo,
    );
    const figure = row?.childrenPerAdult ?? localChildrenPerAdult;
    if (row === undefined || figure === null) return { rule: 'ratio-silent', framework, age: youngest };
    return {
      rule: 'ratio',
      framework,
      row,
      childrenPerAdult: figure,
      children,
      adults: Math.ceil(children / figure),
    };
  });
}

/** First aiders: 1 of the supervisors for a school; by attendance at an open day. */
const firstAidersFor = ({ openDay, attendance }: Situation): number =>
  openDay ? Math.max(FEWEST_FIRST_AIDERS, Math.ceil((FIRST_AIDERS_PER_THOUSAND * attendance) / 1000)) : 1;

/**
 * The adults a situation asks for: the strictest of the chosen ratios, of the stations that run together, and of two.
 * Practitioners come on top: the person with a hammerstone in hand watches the stone.
 *
 * @example computeAdults(rules, situation).because.find(({ rule }) => rule === 'decided')
 */
export function computeAdults(rules: SafetyRules, situation: Situation): Adults {
  const { children, youngest, stations, oneToOneAdults, openDay, attendance } = situation;
  const ratios = ratiosOf(rules, situation);
  const found = ratios.flatMap((because) => (because.rule === 'ratio' ? [because] : []));
  const ratioAdults = Math.max(0, ...found.map(({ adults }) => adults));
  const strictest = Math.min(...found.map(({ childrenPerAdult }) => childrenPerAdult));

  const atStations = stations.map((station) => {
    const rule = stationRule(rules, station.kind);
    const supervisors = supervisorsAt(rule, station.childrenAtOnce, youngest);
    return { station, rule, supervisors };
  });
  const busy = stations.reduce((sum, { childrenAtOnce }) => sum + childrenAtOnce, 0);
  const waiting = Math.max(0, children - busy);
  const waitingSupervisors = waiting === 0 || found.length === 0 ? 0 : Math.ceil(waiting / strictest);
  const stationSupervisors =
    atStations.reduce((sum, { supervisors }) => sum + supervisors, 0) +
    (stations.length === 0 ? 0 : waitingSupervisors);
  const floor = Math.max(ratioAdults, stationSupervisors, FEWEST_SUPERVISORS);
  const supervisors = floor + oneToOneAdults;
  const practitioners = atStations.reduce((sum, { rule }) => sum + rule.practitioners, 0);
  const firstAiders = firstAidersFor(situation);
  const paediatricFirstAid = youngest < PAEDIATRIC_UNDER;
  const eyeSetsNeeded = atStations
    .filter(({ station, rule }) => standsAt(rule, station) < rule.eyeZoneM)
    .reduce((sum, { station, supervisors: at }) => sum + station.childrenAtOnce + at, 0);
  const because: readonly Because[] = [
    ...ratios,
    ...atStations.map(({ station, rule, supervisors: at }): Because => ({
      rule: 'station',
      station: rule,
      childrenAtOnce: station.childrenAtOnce,
      childrenPerSupervisor: childrenPerSupervisor(rule, youngest),
      supervisors: at,
    })),
    ...(stations.length > 0 && waitingSupervisors > 0
      ? [
          {
            rule: 'waiting' as const,
            children: waiting,
            childrenPerAdult: strictest,
            supervisors: waitingSupervisors,
          },
        ]
      : []),
    {
      rule: 'decided',
      by: floor === ratioAdults ? 'ratio' : floor === stationSupervisors ? 'stations' : 'two-at-least',
      supervisors: floor,
    },
    ...(oneToOneAdults > 0 ? [{ rule: 'one-to-one' as const, adults: oneToOneAdults }] : []),
    ...atStations
      .filter(({ rule }) => rule.practitioners > 0)
      .map(({ rule }): Because => ({
        rule: 'practitioner',
        station: rule,
        practitioners: rule.practitioners,
      })),
    {
      rule: 'first-aid',
      firstAiders,
      attendance: openDay ? attendance : null,
      isPaediatric: paediatricFirstAid,
    },
  ];
  return {
    ratioAdults,
    stationSupervisors,
    supervisors,
    practitioners,
    totalAdults: supervisors + practitioners,
    firstAiders,
    paediatricFirstAid,
    eyeSetsNeeded,
    because,
  };
}
