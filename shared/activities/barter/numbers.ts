import type { Path } from '../../lesson/problem.ts';
import type { AskedNumber } from '../kind.ts';
import type { BarterActivity, GatheringActivity } from './activity.ts';
import type { BarterBlock } from './schema.ts';

interface Found {
  readonly value: number;
  readonly path: Path;
}

const greatest = (found: readonly Found[]): Found | null =>
  found.reduce<Found | null>((most, each) => (each.value > (most?.value ?? 0) ? each : most), null);

/** The most of one good that anybody holds, and the highest worth, each where it is written. */
function writtenIn({ world }: GatheringActivity, block: BarterBlock) {
  const isWritten = block.world !== undefined;
  const at = (place: number, ...rest: readonly string[]): Path =>
    isWritten
      ? ['world', ...(place === 0 ? ['you'] : ['traders', world.traders[place - 1]?.id ?? '']), ...rest]
      : ['make'];
  const parties = [world.pupil, ...world.traders];
  return {
    held: greatest(
      parties.flatMap(({ holds }, place) =>
        Object.entries(holds).map(([good, value]) => ({ value, path: at(place, 'holds', good) })),
      ),
    ),
    worth: greatest(
      parties.flatMap(({ wants }, place) =>
        Object.entries(wants).map(([good, worths]) => ({
          value: Math.max(0, ...worths),
          path: at(place, 'wants', good),
        })),
      ),
    ),
  };
}

/** The numbers of a gathering: how many of a thing, worths where they are shown and not only their order, cards. */
export function numbersInBarter(activity: BarterActivity, block: BarterBlock): readonly AskedNumber[] {
  if (activity.play === 'class') {
    const value = activity.deal.cards.length;
    return [{ value, form: 'whole', what: 'pupils', path: ['class', 'pupils'] }];
  }
  const { held, worth } = writtenIn(activity, block);
  return [
    ...(held === null ? [] : [{ ...held, form: 'whole', what: 'held' } as const]),
    ...(worth === null || activity.world.bundle === 1
      ? []
      : [{ ...worth, form: 'whole', what: 'worth' } as const]),
  ];
}
