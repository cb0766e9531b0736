import { PUPIL_PARTS, sheetsOf, type Activity } from '../activities/index.ts';
import { lessonSetting, stationCards, type Plan, type StationCard } from '../compile/index.ts';
import { youngestAge } from '../library/bands.ts';
import { plainSituation, safetyReport, type SafetyRules, type StationRule } from '../safety/index.ts';
import { lessonDayWords as words } from '../words/en/lesson-day.ts';
import { stationWork, type StationWork } from './station-work.ts';

/** A station that a lesson gives a day. */
export interface LessonStation {
  readonly id: string;
  readonly name: string;
  /** As the lesson says; null for what runs beside it, where no minutes are said. */
  readonly minutes: number | null;
  readonly rule: StationRule;
  readonly pupilsAtOnce: number;
  /** Supervisors and practitioners for as many pupils as it holds. */
  readonly adults: number;
  readonly work: StationWork;
  /** The work is written as one piece of several: that which asks for the oldest child. */
  readonly isOfStrictest: boolean;
  readonly kit: readonly string[];
  /** Printed sheets each pupil takes there. */
  readonly sheetsEach: number;
}

export interface LessonStations {
  readonly stations: readonly LessonStation[];
  /** What of the lesson cannot be a station of a day, each a sentence with its reason. */
  readonly leftOut: readonly string[];
}

/** A day file holds no more. */
const MOST_STATIONS = 24;
const MOST_KIT = 40;
const MOST_ADULTS = 12;
/** What a slot may be fixed to beside a station: no station may be called so. */
const TAKEN = ['lunch', 'free'];
const ID = /^[a-z][a-z0-9-]*$/;

/** A pupil sheet each, as the kit list counts them, where the activity has something to write on. */
const pupilSheets = (activity: Activity): number =>
  sheetsOf(activity).some(({ part }) => PUPIL_PARTS.some((each) => each === part)) ? 1 : 0;

/** A name that is not taken: the second of a name has a 2 behind it. */
function freeName(name: string, taken: readonly string[], join: string): string {
  if (!taken.includes(name)) return name;
  let number = 2;
  while (taken.includes(`${name}${join}${number}`)) number += 1;
  return `${name}${join}${number}`;
}

/** A table that real edges make a handling table for flint holds no more than such a table does. */
const pupilsAt = ({ activity, station, rule }: StationCard, stated: string | undefined): number =>
  activity === null && stated !== rule.id
    ? Math.min(station.childrenAtOnce, rule.maximumAtOnce)
    : station.childrenAtOnce;

/**
 * The stations a lesson gives a day: one for each activity, at its table of pieces or at a table with paper, then one for
 * each station it states. What the safety rules refuse where the lesson is, is left out, with the reason.
 *
 * @example lessonStations(rules, plan).stations.map(({ name }) => name)
 */
export function lessonStations(rules: SafetyRules, plan: Plan): LessonStations {
  const setting = lessonSetting(plan);
  const group = plainSituation(0, youngestAge(plan.bands), [], setting);
  const stations: LessonStation[] = [];
  const leftOut: string[] = [];
  for (const [index, card] of stationCards(rules, plan).entries()) {
    const { activity, station, rule } = card;
    const stated = plan.visit?.stations[index - plan.activities.length]?.kind;
    const title = (activity?.title ?? rule.name).replace(/\s+/g, ' ').trim();
    const refusal = safetyReport(rules, { ...group, stations: [station] }).refusals.find(
      ({ outcome }) => outcome === 'refuse',
    );
    if (refusal !== undefined) {
      leftOut.push(words.refused(title, refusal.say));
      continue;
    }
    if (stations.length === MOST_STATIONS) {
      leftOut.push(words.tooMany(title, MOST_STATIONS));
      continue;
    }
    const base = activity?.id ?? station.kind;
    const ids = [...TAKEN, ...stations.map(({ id }) => id)];
    const names = stations.map(({ name }) => name);
    stations.push({
      id: freeName(ID.test(base) ? base : words.stationId, ids, '-'),
      name: freeName(title, names, ' '),
      minutes: activity?.minutes ?? null,
      rule,
      pupilsAtOnce: pupilsAt(card, stated),
      adults: Math.min(MOST_ADULTS, card.supervisors + rule.practitioners),
      work: stationWork(rules, station),
      isOfStrictest: (station.pieces ?? []).length > 1,
      kit: card.kit.flatMap(({ items }) => items).slice(0, MOST_KIT),
      sheetsEach: activity === null ? 0 : pupilSheets(activity),
    });
  }
  return { stations, leftOut };
}
