import type { Day } from './day.ts';
import type { Columns, Keeps } from './columns.ts';
import type { InHand } from './in-hand.ts';
import { sum, type Programme } from './programme.ts';

/** One adult moved from a plan in hand weighs as much as this many stations to learn. ASM. */
const MOVED_WEIGHS = 4;

/**
 * Adults at stations: enough, skilled, one place at a time, when they are free, with their breaks.
 *
 * Where there is a plan in hand, adults were where they were, and change as little as can be after that.
 *
 * @returns With `isCounted`, the terms of how many stations each adult serves; else [].
 */
export function crewRows(
  day: Day,
  keeps: Keeps,
  { visit }: Columns,
  into: Programme,
  { isCounted, inHand }: { readonly isCounted: boolean; readonly inHand?: InHand | undefined },
): readonly string[] {
  const isCrewed = (station: number): boolean =>
    keeps({ kind: 'crew', station }) || keeps({ kind: 'skill', station });
  const crewed = [...day.stations.keys()].filter(isCrewed);
  const at = (adult: number, station: number, slot: number): string | null =>
    isCrewed(station) &&
    (!keeps({ kind: 'adult-free', adult }) || (day.adults[adult]?.freeSlots.includes(slot) ?? false))
      ? into.yesNo(`z_${adult}_${station}_${slot}`)
      : null;
  const atAny = (adult: number, slot: number): readonly (string | null)[] =>
    crewed.map((station) => at(adult, station, slot));

  for (const slot of day.slots.keys()) {
    for (const station of crewed) {
      const open = into.yesNo(`u_${station}_${slot}`);
      for (const group of day.groups.keys()) {
        const visits = sum([visit(group, station, slot)]);
        if (visits.length > 0) into.row([...visits, `- 1 ${open}`], '<= 0');
      }
      const here = day.adults.map((_, adult) => at(adult, station, slot));
      const { adults: wanted = 0, skill = null } = day.stations[station] ?? {};
      if (keeps({ kind: 'crew', station })) into.row([...sum(here), `- ${wanted} ${open}`], '>= 0');
      const skilled = here.filter((_, adult) => skill !== null && day.adults[adult]?.skills.includes(skill));
      if (keeps({ kind: 'skill', station })) into.row([...sum(skilled), `- 1 ${open}`], '>= 0');
    }
    for (const adult of day.adults.keys()) {
      const here = sum(atAny(adult, slot));
      if (here.length > 0) into.row(here, '<= 1');
    }
  }
  for (const [adult, { mostInARow }] of day.adults.entries()) {
    if (mostInARow !== null && keeps({ kind: 'adult-break', adult })) {
      for (let from = 0; from + mostInARow < day.slots.length; from += 1) {
        const run = Array.from({ length: mostInARow + 1 }, (_, more) =>
          sum(atAny(adult, from + more)),
        ).flat();
        if (run.length > 0) into.row(run, `<= ${mostInARow}`);
      }
    }
    const eating = day.lunch?.slots ?? [];
    if (eating.length > 0 && keeps({ kind: 'adult-lunch', adult })) {
      const run = eating.flatMap((slot) => sum(atAny(adult, slot)));
      if (run.length > 0) into.row(run, `<= ${eating.length - 1}`);
    }
  }
  if (inHand !== undefined) {
    for (let slot = 0; slot < Math.min(inHand.fromSlot, day.slots.length); slot += 1) {
      for (const adult of day.adults.keys()) {
        const station = inHand.plan.crew[adult]?.[slot] ?? null;
        const was = station === null ? null : at(adult, station, slot);
        if (was !== null) into.row(sum([was]), '= 1');
      }
    }
  }
  if (!isCounted) return [];
  const serves: string[] = [];
  for (const adult of day.adults.keys()) {
    for (const station of crewed) {
      const each = [...day.slots.keys()].flatMap((slot) => sum([at(adult, station, slot)]));
      if (each.length === 0) continue;
      const served = into.yesNo(`s_${adult}_${station}`);
      for (const term of each) into.row([term, `- 1 ${served}`], '<= 0');
      serves.push(`+ 1 ${served}`);
    }
  }
  for (let slot = inHand?.fromSlot ?? day.slots.length; slot < day.slots.length; slot += 1) {
    for (const adult of day.adults.keys()) {
      for (const station of crewed) {
        if (inHand?.plan.crew[adult]?.[slot] === station) continue;
        serves.push(...sum([at(adult, station, slot)], MOVED_WEIGHS));
      }
    }
  }
  return serves;
}
