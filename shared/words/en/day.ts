const many = (count: number, one: string, other = `${one}s`): string =>
  `${count} ${count === 1 ? one : other}`;

/** A rule of a day as a lead would say it. */
export const dayRuleWords = {
  /** @param at The name of a station, or `lunch` or `free`. */
  fixed: (group: string, at: string, slot: number): string =>
    `${group} ${at === 'free' ? 'has nothing on' : at === 'lunch' ? 'eats lunch' : `is at ${at}`} in slot ${slot}, fixed by hand.`,
  'must-see': (group: string, station: string): string => `${group} must see ${station}.`,
  present: (group: string, arrives: string, leaves: string): string =>
    `${group} is there from ${arrives} to ${leaves}.`,
  shut: (station: string, slots: readonly number[]): string =>
    `${station} is shut in ${slots.length === 1 ? 'slot' : 'slots'} ${slots.join(', ')}.`,
  'groups-at-once': (station: string, groups: number): string =>
    `${station} takes ${many(groups, 'group')} at a time.`,
  'pupils-at-once': (station: string, pupils: number): string => `${station} holds ${many(pupils, 'pupil')}.`,
  ages: (station: string, years: number): string => `${station} is for ages ${years} and up.`,
  lunch: (group: string, slots: readonly number[]): string =>
    `${group} eats lunch in slot ${slots.join(' or ')}.`,
  'lunch-places': (places: number): string => `${many(places, 'pupil')} can sit at lunch at once.`,
  skill: (station: string, skill: string): string => `${station} needs an adult who can do ${skill}.`,
  crew: (station: string, adults: number): string => `${station} needs ${many(adults, 'adult')} of the day.`,
  'adult-free': (role: string, slots: readonly number[]): string =>
    slots.length === 0 ? `${role} is never free.` : `${role} is free in slots ${slots.join(', ')} only.`,
  'adult-break': (role: string, most: number): string => `${role} has a slot off after ${most} in a row.`,
  'adult-lunch': (role: string): string => `${role} has one lunch slot off.`,
  walk: (): string => 'Nobody walks for longer than the time between two bells.',
};

/** What counting alone finds against a day. */
export const dayCountWords = {
  'group-too-large': (group: string, station: string, needed: number, there: number): string =>
    `${group} has ${many(needed, 'pupil')}; ${station} holds ${there}.`,
  'group-too-young': (group: string, station: string, needed: number, there: number): string =>
    `${group} has children of ${there}; ${station} is for ages ${needed} and up.`,
  'group-slots': (group: string, needed: number, there: number, withLunch: boolean): string =>
    `${group} has ${many(needed, 'thing')} to do${withLunch ? ', lunch among them,' : ''} and is there for ${many(there, 'slot')}.`,
  'station-slots': (station: string, needed: number, there: number): string =>
    `${many(needed, 'group')} must see ${station}; it has room for ${there} in the day.`,
  'lunch-seats': (needed: number, there: number): string =>
    `${many(needed, 'pupil')} eat lunch; all sittings together seat ${there}.`,
  'skill-slots': (skill: string, needed: number, there: number): string =>
    `${many(needed, 'slot')} need an adult who can do ${skill}; those who can have ${there} between them, breaks kept.`,
  'crew-slots': (needed: number, there: number): string =>
    `The stations need ${many(needed, 'adult-slot')}; the adults of the day have ${there} between them, breaks kept.`,
};
