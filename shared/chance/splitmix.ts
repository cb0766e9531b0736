const MASK = 0xffff_ffff_ffff_ffffn;

/**
 * splitmix64: the next 64-bit words from a 64-bit seed, used to fill a generator's state.
 *
 * Source: Steele, Lea & Flood, "Fast splittable pseudorandom number generators", OOPSLA 2014.
 * @example splitmix64(1477776061723855037n)() // 1985237415132408290n
 */
export function splitmix64(seed: bigint): () => bigint {
  let state = seed & MASK;
  return () => {
    state = (state + 0x9e37_79b9_7f4a_7c15n) & MASK;
    let mixed = state;
    mixed = ((mixed ^ (mixed >> 30n)) * 0xbf58_476d_1ce4_e5b9n) & MASK;
    mixed = ((mixed ^ (mixed >> 27n)) * 0x94d0_49bb_1331_11ebn) & MASK;
    return mixed ^ (mixed >> 31n);
  };
}
