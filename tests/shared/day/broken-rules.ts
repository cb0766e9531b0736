import type { Day, DayPlan } from '../../../shared/day/index.ts';

/**
 * What a plan breaks, read straight from the rules and by no code of the product. [] for a plan that keeps every rule.
 */
export function brokenRules(day: Day, plan: DayPlan): readonly string[] {
  const broken: string[] = [];
  const check = (holds: boolean, what: string): void => void (holds || broken.push(what));
  const visitsOf = (group: number, station: number): number[] =>
    day.slots.flatMap((_, slot) => {
      const doing = plan.groups[group]?.[slot];
      return doing?.kind === 'station' && doing.station === station ? [slot] : [];
    });
  check(
    plan.groups.length === day.groups.length && plan.crew.length === day.adults.length,
    'a row is missing',
  );

  day.groups.forEach((group, g) => {
    const row = plan.groups[g] ?? [];
    check(row.length === day.slots.length, `${group.id}: a slot is missing`);
    day.stations.forEach((station, s) => {
      const visits = visitsOf(g, s);
      check(visits.length <= 1, `${group.id} at ${station.id} twice`);
      if (group.mustSee.includes(station.id)) check(visits.length === 1, `${group.id} misses ${station.id}`);
      if (visits.length > 0) check(group.youngestYears >= station.fromYears, `${group.id} too young`);
    });
    const lunches = row.flatMap((doing, slot) => (doing.kind === 'lunch' ? [slot] : []));
    const wanted = day.lunch !== null && group.hasLunch ? 1 : 0;
    check(lunches.length === wanted, `${group.id}: ${lunches.length} lunches`);
    check(
      lunches.every((slot) => day.lunch?.slots.includes(slot)),
      `${group.id}: lunch at a wrong time`,
    );
    let before: { slot: number; place: number } | null = null;
    row.forEach((doing, slot) => {
      const bells = day.slots[slot];
      if (bells === undefined) return;
      const there = group.arrivesMinute <= bells.fromMinute && bells.toMinute <= group.leavesMinute;
      check(there === (doing.kind !== 'away'), `${group.id}: there or not in ${slot}`);
      const name =
        doing.kind === 'station'
          ? day.stations[doing.station]?.place
          : doing.kind === 'lunch'
            ? day.lunch?.place
            : null;
      if (name === null || name === undefined) return;
      const place = day.places.indexOf(name);
      const last = day.slots[slot - 1];
      if (before !== null && before.slot === slot - 1 && last !== undefined) {
        const walk = day.walkMinutes[before.place]?.[place] ?? Number.NaN;
        check(walk <= bells.fromMinute - last.toMinute, `${group.id} cannot walk there by ${slot}`);
      }
      before = { slot, place };
    });
  });

  day.slots.forEach((_, slot) => {
    const eating = day.groups.filter((__, g) => plan.groups[g]?.[slot]?.kind === 'lunch');
    const heads = eating.reduce((sum, { pupils }) => sum + pupils, 0);
    check(heads === 0 || heads <= (day.lunch?.places ?? 0), `lunch over in ${slot}`);
    day.stations.forEach((station, s) => {
      const here = day.groups.filter((__, g) => visitsOf(g, s).includes(slot));
      if (here.length === 0) return;
      check(!station.shutSlots.includes(slot), `${station.id} is shut in ${slot}`);
      check(here.length <= station.groupsAtOnce, `${station.id}: groups in ${slot}`);
      check(
        here.reduce((sum, { pupils }) => sum + pupils, 0) <= station.pupilsAtOnce,
        `${station.id} full in ${slot}`,
      );
      if (day.adults.length === 0) return;
      const staff = day.adults.filter((__, a) => plan.crew[a]?.[slot] === s);
      check(staff.length >= station.adults, `${station.id}: adults in ${slot}`);
      const { skill } = station;
      check(
        skill === null || staff.some(({ skills }) => skills.includes(skill)),
        `${station.id}: skill in ${slot}`,
      );
    });
  });

  day.adults.forEach((adult, a) => {
    const row = plan.crew[a] ?? [];
    const worked = row.map((station) => station !== null);
    check(
      worked.every((on, slot) => !on || adult.freeSlots.includes(slot)),
      `${adult.id} is not free`,
    );
    const runs = worked
      .map((on) => (on ? '1' : '0'))
      .join('')
      .split('0');
    check(
      Math.max(...runs.map((run) => run.length)) <= (adult.mostInARow ?? Infinity),
      `${adult.id}: no break`,
    );
    if (adult.hasLunch && day.lunch !== null)
      check(
        day.lunch.slots.some((slot) => worked[slot] !== true),
        `${adult.id}: no lunch`,
      );
  });
  return broken;
}
