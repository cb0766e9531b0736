import type { Lever } from './activity.ts';

/** Low, middle and high of the model, or null where it does not answer. */
export type LeverCell = readonly [low: number, middle: number, high: number] | null;

/** The place in the table of a setting: one option's place for each lever. */
export const cellAt = (levers: readonly Pick<Lever, 'options'>[], places: readonly number[]): number =>
  levers.reduce((index, { options }, lever) => index * options.length + (places[lever] ?? 0), 0);
