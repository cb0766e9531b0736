import { gatheringGoods, type Good, type Trader, type World } from '../bartering/index.ts';
import { readYamlFile, type ReadFile } from './read-yaml-file.ts';
import { worldFile, type WorldParts } from './world-schema.ts';

/** A good with nothing said of it takes what the gathering's own list says. */
const goodFrom = ([id, given]: [string, WorldParts['goods'][string]]): Good => {
  const known = gatheringGoods().find((good) => good.id === id);
  return {
    id,
    one: given?.one ?? known?.one ?? id,
    many: given?.many ?? known?.many ?? id,
    hours: given?.hours === undefined ? (known?.hours ?? null) : given.hours,
    spoilsAfter: given?.['spoils-after'] ?? null,
    onlyGiven: given?.['only-given'] ?? false,
  };
};

function traderFrom(id: string, given: WorldParts['you'] & Partial<WorldParts['traders'][string]>): Trader {
  const wants = Object.entries(given.wants).map(
    ([good, worth]) => [good, typeof worth === 'number' ? [worth] : worth] as const,
  );
  return {
    id,
    name: given.name ?? id,
    holds: given.holds,
    wants: Object.fromEntries(wants),
    forSwapping: given['for-swapping'] ?? [],
    door: given.door ?? 'open',
    returns: given.returns ?? null,
  };
}

/** The world that is written by hand, in a file of its own or in a block. */
export const worldFrom = (parts: WorldParts): World => ({
  goods: Object.entries(parts.goods).map(goodFrom),
  pupil: traderFrom('you', parts.you),
  traders: Object.entries(parts.traders).map(([id, trader]) => traderFrom(id, trader)),
  aim: parts.aim,
  bundle: parts.bundle ?? 1,
});

/** Reads a world file; every problem has its line and column. What it comes to is for `checkWorld` to say. */
export function readWorld(file: string, text: string): ReadFile<World> {
  const read = readYamlFile(file, text, worldFile);
  return { ...read, value: read.value === null ? null : worldFrom(read.value) };
}
