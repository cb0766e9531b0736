/** The four 32-bit words of the generator; not all zero. */
export type State = readonly [number, number, number, number];

/**
 * xoshiro128** 1.1: a function that gives the next 32-bit word at each call.
 *
 * The state lies in a typed array because words above 2^31 kept in variables cost more than twice the time.
 * Source: Blackman & Vigna, "Scrambled linear pseudorandom number generators", ACM TOMS 47 (2021) 36.
 * @throws RangeError when every word is zero, from which the generator never leaves.
 * @example xoshiro128([1, 2, 3, 4])() // 11520
 */
export function xoshiro128(state: State): () => number {
  const words = Int32Array.from(state, (word) => word | 0);
  if (words.every((word) => word === 0)) throw new RangeError('a state of four zeros gives only zeros');
  return () => {
    const a = words[0] ?? 0;
    const b = words[1] ?? 0;
    const c = (words[2] ?? 0) ^ a;
    const d = (words[3] ?? 0) ^ b;
    const scrambled = Math.imul(b, 5);
    words[0] = a ^ d;
    words[1] = b ^ c;
    words[2] = c ^ (b << 9);
    words[3] = (d << 11) | (d >>> 21);
    return Math.imul((scrambled << 7) | (scrambled >>> 25), 9) >>> 0;
  };
}
