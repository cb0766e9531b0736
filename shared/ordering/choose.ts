/**
 * The ways to choose `taken` of `all`, exactly; 0 where more are taken than there are.
 *
 * @throws RangeError unless both are whole numbers from 0.
 * @example choose(9, 4) // 126n
 */
export function choose(all: number, taken: number): bigint {
  if (!Number.isInteger(all) || !Number.isInteger(taken) || all < 0 || taken < 0) {
    throw new RangeError(`cannot choose ${taken} of ${all}`);
  }
  let result = 1n;
  for (let index = 1; index <= taken; index += 1)
    result = (result * BigInt(all - taken + index)) / BigInt(index);
  return taken > all ? 0n : result;
}
