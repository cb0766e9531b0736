import type { Asks } from '../kind.ts';
import type { Ask, EstimateActivity } from './activity.ts';

/** Fewest stretches of time to hold a task against before times are compared. */
const FEWEST_STRETCHES = 2;

/** Units in which a mass is told. */
const MASS_UNITS: readonly EstimateActivity['unit'][] = ['g', 'kg'];

function metBy(how: Ask, { choices, unit }: Pick<EstimateActivity, 'choices' | 'unit'>): readonly string[] {
  if (how === 'choose') return choices.length >= FEWEST_STRETCHES ? ['durations'] : [];
  return [
    // A figure of one's own comes first, and the worked one is read beside it.
    'check-estimate',
    // The pupil sheet and the way in pairs ask for the reason.
    ...(how === 'interval' ? ['interval'] : []),
    ...(MASS_UNITS.includes(unit) ? ['units-mass'] : []),
  ];
}

/**
 * What an estimate asks, band by band. Nothing is said of choosing a unit, turning one into another, or scaling one to
 * many: the unit is given and the model does the scaling.
 *
 * @example asksEstimate({ asks: [{ how: 'interval', bands: ['11-14'] }], choices: [], unit: 'h' }).metIn
 *   // [{ bands: ['11-14'], met: ['check-estimate', 'interval'] }]
 */
export const asksEstimate = (activity: Pick<EstimateActivity, 'asks' | 'choices' | 'unit'>): Asks => ({
  met: [],
  metIn: activity.asks.map(({ how, bands }) => ({ bands, met: metBy(how, activity) })),
  things: null,
});
