import { isThere, slotMinutes, type Day } from './day.ts';

/**
 * The fewest minutes each group can have nothing on, by counting: all its longest slots busy, as many as it may have.
 * No plan has less, and where all groups have just this, no plan is more even with as little.
 */
export const leastIdle = (day: Day): readonly number[] =>
  day.groups.map((who) => {
    const fits = day.stations.filter(
      ({ pupilsAtOnce, fromYears }) => who.pupils <= pupilsAtOnce && who.youngestYears >= fromYears,
    ).length;
    const eats = who.hasLunch && day.lunch !== null ? 1 : 0;
    return day.slots
      .filter((bells) => isThere(who, bells))
      .map(slotMinutes)
      .toSorted((a, b) => b - a)
      .slice(fits + eats)
      .reduce((sum, minutes) => sum + minutes, 0);
  });
