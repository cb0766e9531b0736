/** The four 32-bit words of the generator; not all zero. */
export type State = readonly [number, number, number, number];

const rotateLeft = (word: number, bits: number): number => ((word << bits) | (word >>> (32 - bits))) >>> 0;

/**
 * xoshiro128** 1.1: a function that gives the next 32-bit word at each call.
 *
 * Source: Blackman & Vigna, "Scrambled linear pseudorandom number generators", ACM TOMS 47 (2021) 36.
 * @throws RangeError when every word is zero, from which the generator never leaves.
 * @example xoshiro128([1, 2, 3, 4])() // 11520
 */
export function xoshiro128(state: State): () => number {
  let [a, b, c, d] = state.map((word) => word >>> 0) as [number, number, number, number]; // map keeps the length
  if ((a | b | c | d) === 0) throw new RangeError('a state of four zeros gives only zeros');
  return () => {
    const result = Math.imul(rotateLeft(Math.imul(b, 5) >>> 0, 7), 9) >>> 0;
    const shifted = (b << 9) >>> 0;
    c = (c ^ a) >>> 0;
    d = (d ^ b) >>> 0;
    b = (b ^ c) >>> 0;
    a = (a ^ d) >>> 0;
    c = (c ^ shifted) >>> 0;
    d = rotateLeft(d, 11);
    return result;
  };
}
