import { gatheringGoods, type Good, type Trader, type World } from '../../shared/bartering/index.ts';
import { readYamlFile, type ReadFile } from '../../shared/library/index.ts';
import { worldFile, type WorldFile } from './world-schema.ts';

/** A good with nothing said of it takes what the gathering's own list says. */
const goodFrom = ([id, given]: [string, WorldFile['goods'][string]]): Good => {
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

function traderFrom(id: string, given: WorldFile['you'] & Partial<WorldFile['traders'][string]>): Trader {
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

/** The world a file describes. */
const worldFrom = (file: WorldFile): World => ({
  goods: Object.entries(file.goods).map(goodFrom),
  pupil: traderFrom('you', file.you),
  traders: Object.entries(file.traders).map(([id, trader]) => traderFrom(id, trader)),
  aim: file.aim,
  bundle: file.bundle ?? 1,
});

/** Reads a world file; every problem has its line and column. What it comes to is for `checkWorld` to say. */
export function readWorld(file: string, text: string): ReadFile<World> {
  const read = readYamlFile(file, text, worldFile);
  return { ...read, value: read.value === null ? null : worldFrom(read.value) };
}
