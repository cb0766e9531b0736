import { useEffect, useRef, useState } from 'preact/hooks';
import type { CompareActivity, ComparePair } from '../../shared/activities/scorers.ts';
import { alikeByChance } from '../../shared/assemblage/index.ts';
import { derive, stream } from '../../shared/chance/index.ts';

/** Shuffles at one press. */
export const SHUFFLES = 400;
/** Shuffles between two frames, so that the page keeps answering and the pile is seen to grow. */
const SLICE = 20;

/** How alike each shuffle so far made each pair, by the pair's id. */
export type Piles = Readonly<Record<string, readonly number[]>>;

export interface Shuffles {
  readonly piles: Piles;
  /** The pair whose pile grows now. */
  readonly growing: string | null;
  readonly shuffle: (pair: ComparePair) => void;
}

/** Shuffles the finds of a site in slices. The same activity always grows the same piles. */
export function useShuffles(
  { kinds, pits, chance, seed }: CompareActivity,
  onDone: (pair: ComparePair, pile: readonly number[]) => void,
): Shuffles {
  const [piles, setPiles] = useState<Piles>({});
  const [growing, setGrowing] = useState<string | null>(null);
  const frame = useRef(0);
  useEffect(() => () => cancelAnimationFrame(frame.current), []);
  const counts = {
    pits: pits.map(({ cut }) => cut.id),
    kinds: kinds.map(({ id }) => id),
    rows: pits.map((_, pit) => kinds.map((kind) => kind.counts[pit] ?? 0)),
  };
  return {
    piles,
    growing,
    shuffle: (pair) => {
      if (chance === null || growing !== null) return;
      setGrowing(pair.id);
      const pile = [...(piles[pair.id] ?? [])];
      const end = pile.length + SHUFFLES;
      const grow = (): void => {
        alikeByChance(counts, {
          by: chance.by,
          keeps: chance.keeps,
          shuffles: SLICE,
          chance: derive(stream(seed), `pile-${pair.id}-${pile.length}`),
          pairs: [[pair.first, pair.second]],
          watch: (_, likeness) => pile.push(likeness),
        });
        setPiles((before) => ({ ...before, [pair.id]: [...pile] }));
        if (pile.length < end) {
          frame.current = requestAnimationFrame(grow);
        } else {
          setGrowing(null);
          onDone(pair, pile);
        }
      };
      frame.current = requestAnimationFrame(grow);
    },
  };
}
