import { splitmix64 } from './splitmix.ts';
import { xoshiro128 } from './xoshiro.ts';

/** A source of chance: the same seed gives the same words for ever. */
export interface Stream {
  /** The seed it was made from, kept so that streams can be derived by name. */
  readonly seed: string;
  /** The next whole number from 0 to 2^32 - 1. */
  readonly next: () => number;
}

/** FNV-1a over UTF-16 units, 64 bits. Source: Fowler, Noll & Vo; IETF draft-eastlake-fnv, constants of section 5. */
function hashText(text: string): bigint {
  let hash = 0xcbf2_9ce4_8422_2325n;
  for (let index = 0; index < text.length; index += 1) {
    hash ^= BigInt(text.charCodeAt(index));
    hash = (hash * 0x0000_0100_0000_01b3n) & 0xffff_ffff_ffff_ffffn;
  }
  return hash;
}

/**
 * A stream from a seed of any text.
 *
 * @example stream('P3').next() === stream('P3').next() // true
 */
export function stream(seed: string): Stream {
  const fill = splitmix64(hashText(seed));
  const first = fill();
  const second = fill();
  const low = (word: bigint): number => Number(word & 0xffff_ffffn);
  const high = (word: bigint): number => Number(word >> 32n);
  return { seed, next: xoshiro128([low(first), high(first), low(second), high(second)]) };
}

/**
 * A stream of its own for one use, by name: what is drawn from it changes nothing elsewhere.
 *
 * @example derive(stream('7'), 'pit-P3').seed // '7/pit-P3'
 */
export const derive = (parent: Stream, name: string): Stream => stream(`${parent.seed}/${name}`);
