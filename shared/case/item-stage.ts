import type { Framework } from '../curriculum/index.ts';
import { gradeStage } from './grade-stage.ts';
import type { ItemTree } from './item-tree.ts';
import type { ReadItem } from './package-schema.ts';

type Stage = Framework['stages'][number];
type Ours = NonNullable<NonNullable<ReadItem['extensions']>['pitlore']>;

/** What an item of ours says beyond the standard; null for anyone else's. */
export const oursOf = ({ extensions }: ReadItem): Ours | null => extensions?.pitlore ?? null;

/** The stage an item of ours is; null for any other item. */
export function ownStage(item: ReadItem): Stage | null {
  const own = oursOf(item);
  return own !== null && 'stage' in own
    ? { id: own.stage, label: item.fullStatement, from: own.from, to: own.to }
    : null;
}

/** The stage of an item: one above it, else what its grades make, or the grades of what is above it. */
export function stageOf(item: ReadItem, tree: ItemTree): Stage | null {
  const above = tree.above(item.identifier);
  const own = above.map(ownStage).find((stage) => stage !== null);
  if (own !== undefined) return own;
  const graded = [item, ...above].find(({ educationLevel = [] }) => educationLevel.length > 0);
  return gradeStage(graded?.educationLevel ?? []);
}
