import type { World } from '../../shared/bartering/index.ts';
import { goodWords } from './barter-view.ts';
import { GoodThing } from './GoodThing.tsx';

interface Props {
  readonly world: World;
  readonly good: string;
  readonly count?: number;
  readonly worth?: string;
}

/** So many of a good of a gathering, drawn and named. */
export const Thing = ({ world, good, count = 1, ...more }: Props) => (
  <GoodThing good={good} words={goodWords(world, good, count)} {...more} />
);
