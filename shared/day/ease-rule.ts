import { dayEasingWords } from '../words/en/day-easing.ts';
import { tellClock } from './clock.ts';
import type { Day } from './day.ts';
import type { DayRule } from './rules.ts';

/** A change to a day file: write `value` at the path, or take away what stands there. */
export type DayEdit =
  | { readonly path: readonly (string | number)[]; readonly value: unknown }
  | { readonly path: readonly (string | number)[]; readonly remove: true };

/** What would free a rule. */
export interface Easing {
  readonly says: string;
  /** Null where a press may not do it: a limit that is there for safety. */
  readonly edits: readonly DayEdit[] | null;
}

const UNKNOWN: Easing = { says: '', edits: null };

/** The most pupils that so many groups bring together. */
const mostPupils = (day: Day, groupsAtOnce: number): number =>
  day.groups
    .map(({ pupils }) => pupils)
    .toSorted((a, b) => b - a)
    .slice(0, groupsAtOnce)
    .reduce((sum, pupils) => sum + pupils, 0);

/** New adults for a day, all day long; none of their ids is taken. */
function moreAdults(day: Day, count: number, skills: readonly string[]): readonly DayEdit[] {
  const taken = new Set(day.adults.map(({ id }) => id));
  const edits: DayEdit[] = [];
  for (let number = 1; edits.length < count; number += 1) {
    const id = `more-${number}`;
    if (taken.has(id)) continue;
    const value = { role: `${dayEasingWords.more} (${number})`, ...(skills.length === 0 ? {} : { skills }) };
    edits.push({ path: ['adults', id], value });
  }
  return edits;
}

function easeStation(day: Day, rule: Extract<DayRule, { readonly station: number }>): Easing {
  const station = day.stations[rule.station];
  if (station === undefined) return UNKNOWN;
  const { id, name } = station;
  const path = ['stations', id];
  switch (rule.kind) {
    case 'must-see': {
      const group = day.groups[rule.group];
      if (group === undefined) return UNKNOWN;
      const value = group.mustSee.filter((other) => other !== id);
      return {
        says: dayEasingWords['must-see'](group.name, name),
        edits: [{ path: ['groups', group.id, 'must-see'], value }],
      };
    }
    case 'shut':
      return { says: dayEasingWords.shut(name), edits: [{ path: [...path, 'shut'], remove: true }] };
    case 'groups-at-once': {
      const value = station.groupsAtOnce + 1;
      const pupils = Math.max(station.pupilsAtOnce, mostPupils(day, value));
      return {
        says: dayEasingWords['groups-at-once'](name, value),
        edits: [
          { path: [...path, 'groups'], value },
          ...(pupils > station.pupilsAtOnce ? [{ path: [...path, 'pupils'], value: pupils }] : []),
        ],
      };
    }
    case 'pupils-at-once': {
      const value = Math.max(station.pupilsAtOnce + 1, mostPupils(day, station.groupsAtOnce));
      return {
        says: dayEasingWords['pupils-at-once'](name, value),
        edits: [{ path: [...path, 'pupils'], value }],
      };
    }
    case 'skill': {
      const skill = station.skill ?? '';
      return { says: dayEasingWords.skill(skill), edits: moreAdults(day, 1, [skill]) };
    }
    case 'crew':
      return { says: dayEasingWords.crew(station.adults), edits: moreAdults(day, station.adults, []) };
    case 'ages':
      return { says: dayEasingWords.ages(name), edits: null };
    default:
      return rule satisfies never;
  }
}

function easeAdult(day: Day, rule: Extract<DayRule, { readonly adult: number }>): Easing {
  const adult = day.adults[rule.adult];
  if (adult === undefined) return UNKNOWN;
  const path = ['adults', adult.id];
  switch (rule.kind) {
    case 'adult-free':
      return {
        says: dayEasingWords['adult-free'](adult.role),
        edits: [{ path: [...path, 'free'], remove: true }],
      };
    case 'adult-break':
      return {
        says: dayEasingWords['adult-break'](adult.role),
        edits: [{ path: [...path, 'most-in-a-row'], remove: true }],
      };
    case 'adult-lunch':
      return {
        says: dayEasingWords['adult-lunch'](adult.role),
        edits: [{ path: [...path, 'lunch'], value: false }],
      };
    default:
      return rule satisfies never;
  }
}

function easeGroup(day: Day, rule: Extract<DayRule, { readonly kind: 'present' | 'lunch' }>): Easing {
  const group = day.groups[rule.group];
  if (group === undefined) return UNKNOWN;
  const path = ['groups', group.id];
  if (rule.kind === 'lunch')
    return { says: dayEasingWords.lunch(group.name), edits: [{ path: [...path, 'lunch'], value: false }] };
  const from = tellClock(Math.min(group.arrivesMinute, day.slots[0]?.fromMinute ?? group.arrivesMinute));
  const to = tellClock(Math.max(group.leavesMinute, day.slots.at(-1)?.toMinute ?? group.leavesMinute));
  return {
    says: dayEasingWords.present(group.name, from, to),
    edits: [
      { path: [...path, 'arrives'], value: from },
      { path: [...path, 'leaves'], value: to },
    ],
  };
}

/** What would free a rule of the day, in words and as changes to its file. */
export function easeRule(day: Day, rule: DayRule): Easing {
  if (rule.kind === 'walk')
    return { says: dayEasingWords.walk(), edits: [{ path: ['late-walks'], value: true }] };
  if (rule.kind === 'fixed')
    return { says: dayEasingWords.fixed(), edits: [{ path: ['fixed', rule.fixed], remove: true }] };
  if (rule.kind === 'lunch-places') {
    const value = day.groups.reduce((sum, { pupils, hasLunch }) => sum + (hasLunch ? pupils : 0), 0);
    return { says: dayEasingWords['lunch-places'](value), edits: [{ path: ['lunch', 'places'], value }] };
  }
  if (rule.kind === 'present' || rule.kind === 'lunch') return easeGroup(day, rule);
  return 'adult' in rule ? easeAdult(day, rule) : easeStation(day, rule);
}
