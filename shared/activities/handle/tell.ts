import { pick, uniformBelow, type Stream } from '../../chance/index.ts';
import type { Told } from '../kind.ts';
import { SENSES, type HandleActivity, type Sense } from './activity.ts';
import type { HandlePlay } from './play.ts';

/** What was met, in the order of passing, and what the group would ask about. */
export interface HandleTold extends Told {
  readonly met: readonly { readonly piece: string; readonly senses: readonly Sense[] }[];
  readonly notMet: readonly string[];
  /** Most hands first; alike in the order of passing. */
  readonly asks: readonly { readonly piece: string; readonly hands: number }[];
}

/** What a group did with the pieces. Holding a thing is never right or wrong, so there is no score. */
export function tellHandling({ pieces }: HandleActivity, { met, asks = {} }: HandlePlay): HandleTold {
  const rows = pieces.map(({ id, prompts }) => ({
    piece: id,
    senses: SENSES.filter(
      (sense) => (met[id] ?? []).includes(sense) && prompts.some((prompt) => prompt.sense === sense),
    ),
  }));
  return {
    met: rows.filter(({ senses }) => senses.length > 0),
    notMet: rows.filter(({ senses }) => senses.length === 0).map(({ piece }) => piece),
    asks: pieces
      .map(({ id }) => ({ piece: id, hands: asks[id] ?? 0 }))
      .filter(({ hands }) => hands > 0)
      .toSorted((a, b) => b.hands - a.hands),
  };
}

/** Some pieces met with some senses, and one to ask about. */
export function sampleHandling({ id, pieces }: HandleActivity, chance: Stream): HandlePlay {
  const met = Object.fromEntries(
    pieces.map(({ id: piece, prompts }) => [
      piece,
      prompts.map(({ sense }) => sense).filter(() => uniformBelow(chance, 2) === 1),
    ]),
  );
  return { activity: id, met, asks: { [pick(chance, pieces).id]: 1 + uniformBelow(chance, 30) } };
}
