import type { Day } from './day.ts';

/** A rule of the day that could be given up, each by number: what a conflict is made of. */
export type DayRule =
  | { readonly kind: 'fixed'; readonly fixed: number }
  | { readonly kind: 'walk' }
  | { readonly kind: 'adult-lunch'; readonly adult: number }
  | { readonly kind: 'adult-break'; readonly adult: number }
  | { readonly kind: 'adult-free'; readonly adult: number }
  | { readonly kind: 'crew'; readonly station: number }
  | { readonly kind: 'skill'; readonly station: number }
  | { readonly kind: 'lunch-places' }
  | { readonly kind: 'lunch'; readonly group: number }
  | { readonly kind: 'ages'; readonly station: number }
  | { readonly kind: 'pupils-at-once'; readonly station: number }
  | { readonly kind: 'groups-at-once'; readonly station: number }
  | { readonly kind: 'shut'; readonly station: number }
  | { readonly kind: 'present'; readonly group: number }
  | { readonly kind: 'must-see'; readonly group: number; readonly station: number };

/** One text for each rule. @example ruleKey({ kind: 'must-see', group: 0, station: 2 }) // 'must-see/0/2' */
export function ruleKey(rule: DayRule): string {
  const parts: (string | number)[] = [rule.kind];
  if ('fixed' in rule) parts.push(rule.fixed);
  if ('adult' in rule) parts.push(rule.adult);
  if ('group' in rule) parts.push(rule.group);
  if ('station' in rule) parts.push(rule.station);
  return parts.join('/');
}

/** Every rule of a day, those a lead would give up first at the front; must-sees and what was fixed by hand last. */
export function rulesOf(day: Day): readonly DayRule[] {
  const { groups, stations, adults, lunch, fixed } = day;
  const hasCrew = adults.length > 0;
  const eating = lunch === null ? [] : [...groups.entries()].filter(([, { hasLunch }]) => hasLunch);
  return [
    ...(day.mayWalkLate ? [] : [{ kind: 'walk' } as const]),
    ...adults.flatMap(({ hasLunch }, adult): readonly DayRule[] =>
      hasLunch && lunch !== null ? [{ kind: 'adult-lunch', adult }] : [],
    ),
    ...adults.flatMap(({ mostInARow }, adult): readonly DayRule[] =>
      mostInARow === null ? [] : [{ kind: 'adult-break', adult }],
    ),
    ...adults.map((_, adult): DayRule => ({ kind: 'adult-free', adult })),
    ...stations.flatMap(({ adults: wanted }, station): readonly DayRule[] =>
      hasCrew && wanted > 0 ? [{ kind: 'crew', station }] : [],
    ),
    ...stations.flatMap(({ skill }, station): readonly DayRule[] =>
      hasCrew && skill !== null ? [{ kind: 'skill', station }] : [],
    ),
    ...(eating.length > 0 ? [{ kind: 'lunch-places' } as const] : []),
    ...eating.map(([group]): DayRule => ({ kind: 'lunch', group })),
    ...stations.flatMap(({ fromYears }, station): readonly DayRule[] =>
      fromYears > 0 ? [{ kind: 'ages', station }] : [],
    ),
    ...stations.map((_, station): DayRule => ({ kind: 'pupils-at-once', station })),
    ...stations.map((_, station): DayRule => ({ kind: 'groups-at-once', station })),
    ...stations.flatMap(({ shutSlots }, station): readonly DayRule[] =>
      shutSlots.length > 0 ? [{ kind: 'shut', station }] : [],
    ),
    ...groups.map((_, group): DayRule => ({ kind: 'present', group })),
    ...groups.flatMap(({ mustSee }, group) =>
      stations.flatMap(({ id }, station): readonly DayRule[] =>
        mustSee.includes(id) ? [{ kind: 'must-see', group, station }] : [],
      ),
    ),
    ...fixed.map((_, index): DayRule => ({ kind: 'fixed', fixed: index })),
  ];
}
