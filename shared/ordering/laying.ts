import type { Precedence } from './precedence.ts';

/** Cards as laid, first to last; an inner list holds cards laid at the same place. Cards left out are not named. */
export type Laid = readonly (string | readonly string[])[];

/** A laying read against its steps. */
export interface Laying {
  /** The place of each step in the line, from 0; null where its card was not laid. */
  readonly places: readonly (number | null)[];
  /** Cards not laid. */
  readonly left: readonly string[];
  /** Names laid that are no step of this activity, or laid a second time: they count for nothing. */
  readonly strays: readonly string[];
}

/** Reads a laying; the first place of a card laid twice counts. */
export function readLaid(precedence: Precedence, laid: Laid): Laying {
  const places: (number | null)[] = precedence.ids.map(() => null);
  const strays: string[] = [];
  for (const [place, cards] of laid.entries()) {
    for (const id of typeof cards === 'string' ? [cards] : cards) {
      const step = precedence.ids.indexOf(id);
      if (step < 0 || places[step] !== null) strays.push(id);
      else places[step] = place;
    }
  }
  return { places, left: precedence.ids.filter((_, step) => places[step] === null), strays };
}
