import type { MakingFigures } from './figures.ts';
import { type Part, reckonPart, type Reckoning } from './reckoning.ts';
import type { Tree } from './resolve.ts';

/**
 * Minutes to fell a tree with a stone axe: c w u a D^2.5 for a trunk that needs a notch, with D² below that thickness
 * and no step between them.
 */
export function felling(figures: MakingFigures, { diameterCm, wood, axe, skill }: Tree): Part {
  const base = figures.coefficients['fell-coefficient'];
  const power = figures.coefficients['fell-exponent'];
  const smallPower = figures.coefficients['fell-small-exponent'];
  const smallBelow = figures.coefficients['fell-small-below'];
  const sigma = figures.spreads['spread-fell'];
  const small = diameterCm < smallBelow.middle;
  const thickness = small
    ? smallBelow.middle ** (power.middle - smallPower.middle) * diameterCm ** smallPower.middle
    : diameterCm ** power.middle;
  return {
    middle:
      base.middle *
      wood.fellFactor.middle *
      skill.fellMultiplier.middle *
      axe.fellMultiplier.middle *
      thickness,
    sigma: sigma.middle,
    used: [
      base,
      power,
      ...(small ? [smallPower, smallBelow] : []),
      wood.fellFactor,
      skill.fellMultiplier,
      axe.fellMultiplier,
      sigma,
    ],
  };
}

/** The same tree with a steel axe: the stone's minutes over a ratio that is itself known within a factor. */
export function reckonSteelFelling(figures: MakingFigures, tree: Tree): Reckoning {
  const stone = felling(figures, tree);
  const ratio = figures.coefficients['steel-ratio'];
  const sigma = figures.spreads['spread-steel-ratio'];
  const steel: Part = {
    middle: stone.middle / ratio.middle,
    sigma: Math.hypot(stone.sigma, sigma.middle),
    used: [...stone.used, ratio, sigma],
  };
  return reckonPart(steel, 'min');
}
