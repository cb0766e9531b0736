const many = (count: number, one: string): string => `${count} ${one}${count === 1 ? '' : 's'}`;

/** What would free a rule that stands in the way: what the press does to the file. */
export const dayEasingWords = {
  'must-see': (group: string, station: string): string => `Let ${group} go without ${station}`,
  present: (group: string, from: string, to: string): string => `Have ${group} there from ${from} to ${to}`,
  shut: (station: string): string => `Open ${station} all day`,
  'groups-at-once': (station: string, groups: number): string =>
    `Let ${many(groups, 'group')} into ${station} at a time`,
  'pupils-at-once': (station: string, pupils: number): string =>
    `Let ${many(pupils, 'pupil')} into ${station}, if your own assessment holds them`,
  lunch: (group: string): string => `Let ${group} eat outside the plan`,
  'lunch-places': (places: number): string => `Find places for ${places} at lunch`,
  skill: (skill: string): string => `Find one more adult who can do ${skill}`,
  crew: (adults: number): string => `Find ${many(adults, 'more adult')}`,
  'adult-free': (role: string): string => `Have ${role} there all day`,
  'adult-break': (role: string): string => `Let ${role} work without that slot off`,
  'adult-lunch': (role: string): string => `Let ${role} eat at another time`,
  walk: (): string => 'Let groups come late where a walk is longer than the time between bells',
  fixed: (): string => 'Let this slot go where it may',
  /** No press: a limit that is there for safety is changed by the one who set it. */
  ages: (station: string): string =>
    `The age limit of ${station} is there for safety: only whoever set it changes it, in the file`,
  more: 'One more adult',
};
