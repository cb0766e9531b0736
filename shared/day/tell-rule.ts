import { dayCountWords, dayRuleWords } from '../words/en/day.ts';
import { tellClock } from './clock.ts';
import type { TooMany } from './count-day.ts';
import type { Day } from './day.ts';
import type { DayRule } from './rules.ts';

const groupName = (day: Day, group: number): string => day.groups[group]?.name ?? '';
const stationName = (day: Day, station: number): string => day.stations[station]?.name ?? '';
const fromOne = (slots: readonly number[]): readonly number[] => slots.map((slot) => slot + 1);

/** A rule as a sentence. */
export function tellRule(day: Day, rule: DayRule): string {
  const station = 'station' in rule ? day.stations[rule.station] : undefined;
  const group = 'group' in rule ? day.groups[rule.group] : undefined;
  const adult = 'adult' in rule ? day.adults[rule.adult] : undefined;
  const at = station?.name ?? '';
  const who = group?.name ?? '';
  const role = adult?.role ?? '';
  switch (rule.kind) {
    case 'fixed': {
      const said = day.fixed[rule.fixed];
      const at = said?.at.kind === 'station' ? stationName(day, said.at.station) : (said?.at.kind ?? 'free');
      return dayRuleWords.fixed(groupName(day, said?.group ?? -1), at, (said?.slot ?? 0) + 1);
    }
    case 'must-see':
      return dayRuleWords['must-see'](who, at);
    case 'present':
      return dayRuleWords.present(
        who,
        tellClock(group?.arrivesMinute ?? 0),
        tellClock(group?.leavesMinute ?? 0),
      );
    case 'shut':
      return dayRuleWords.shut(at, fromOne(station?.shutSlots ?? []));
    case 'groups-at-once':
      return dayRuleWords['groups-at-once'](at, station?.groupsAtOnce ?? 0);
    case 'pupils-at-once':
      return dayRuleWords['pupils-at-once'](at, station?.pupilsAtOnce ?? 0);
    case 'ages':
      return dayRuleWords.ages(at, station?.fromYears ?? 0);
    case 'lunch':
      return dayRuleWords.lunch(who, fromOne(day.lunch?.slots ?? []));
    case 'lunch-places':
      return dayRuleWords['lunch-places'](day.lunch?.places ?? 0);
    case 'skill':
      return dayRuleWords.skill(at, station?.skill ?? '');
    case 'crew':
      return dayRuleWords.crew(at, station?.adults ?? 0);
    case 'adult-free':
      return dayRuleWords['adult-free'](role, fromOne(adult?.freeSlots ?? []));
    case 'adult-break':
      return dayRuleWords['adult-break'](role, adult?.mostInARow ?? 0);
    case 'adult-lunch':
      return dayRuleWords['adult-lunch'](role);
    case 'walk':
      return dayRuleWords.walk();
    default:
      return rule satisfies never;
  }
}

/** What counting found, as a sentence. */
export function tellCount(day: Day, reason: TooMany): string {
  const { needed, there } = reason;
  switch (reason.kind) {
    case 'group-too-large':
    case 'group-too-young':
      return dayCountWords[reason.kind](
        groupName(day, reason.group),
        stationName(day, reason.station),
        needed,
        there,
      );
    case 'group-slots':
      return dayCountWords['group-slots'](
        groupName(day, reason.group),
        needed,
        there,
        reason.rules.some(({ kind }) => kind === 'lunch'),
      );
    case 'station-slots':
      return dayCountWords['station-slots'](stationName(day, reason.station), needed, there);
    case 'skill-slots':
      return dayCountWords['skill-slots'](reason.skill, needed, there);
    case 'lunch-seats':
    case 'crew-slots':
      return dayCountWords[reason.kind](needed, there);
    default:
      return reason satisfies never;
  }
}
