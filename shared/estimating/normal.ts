/**
 * Share of a standard normal distribution that lies below `z`.
 *
 * Absolute error under 7.5e-8. Source: Abramowitz & Stegun 1964, Handbook of Mathematical Functions, 26.2.17.
 * @example standardNormalBelow(0) // 0.5
 */
export function standardNormalBelow(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const tail =
    standardNormalDensity(z) *
    t *
    (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return z >= 0 ? 1 - tail : tail;
}

/** Height of the standard normal curve at `z`. @example standardNormalDensity(0) // 0.3989 */
export const standardNormalDensity = (z: number): number => Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI);

// Wichura 1988, "Algorithm AS 241", Applied Statistics 37: 477-484, PPND7: numerator and denominator coefficients.
const CENTRE = [3.3871327179, 50.434271938, 159.29113202, 59.10937472] as const;
const CENTRE_BELOW = [1, 17.895169469, 78.757757664, 67.1875636] as const;
const NEAR = [1.4234372777, 2.75681539, 1.3067284816, 0.17023821103] as const;
const NEAR_BELOW = [1, 0.7370016425, 0.12021132975, 0] as const;
const FAR = [6.657905115, 3.081226386, 0.42868294337, 0.017337203997] as const;
const FAR_BELOW = [1, 0.24197894225, 0.012258202635, 0] as const;

type Cubic = readonly [number, number, number, number];

const at = ([a, b, c, d]: Cubic, x: number): number => ((d * x + c) * x + b) * x + a;

/**
 * The `z` below which a share `p` of a standard normal distribution lies.
 *
 * Relative error about 1e-7. Source: Wichura 1988, algorithm AS 241 (PPND7).
 * @throws RangeError unless 0 < p < 1.
 * @example standardNormalQuantile(0.95) // 1.6449
 */
export function standardNormalQuantile(p: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError(`p must lie between 0 and 1, received ${p}`);
  const fromMiddle = p - 0.5;
  if (Math.abs(fromMiddle) <= 0.425) {
    const r = 0.180625 - fromMiddle * fromMiddle;
    return (fromMiddle * at(CENTRE, r)) / at(CENTRE_BELOW, r);
  }
  const r = Math.sqrt(-Math.log(Math.min(p, 1 - p)));
  const z = r <= 5 ? at(NEAR, r - 1.6) / at(NEAR_BELOW, r - 1.6) : at(FAR, r - 5) / at(FAR_BELOW, r - 5);
  return fromMiddle < 0 ? -z : z;
}
