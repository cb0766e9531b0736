/** Every code a hand-written world may be given back with: noun, then fault, sorted. */
export const WORLD_FAULT_CODES = [
  'aim-held',
  'aim-unclear',
  'aim-unheld',
  'aim-unknown',
  'bundle-over',
  'count-unfit',
  'dead-end-final',
  'door-never-opens',
  'good-repeated',
  'good-unknown',
  'good-unused',
  'par-over',
  'return-spoils',
  'return-unheld',
  'trader-idle',
  'trader-repeated',
  'traders-over',
  'wants-rise',
  'world-too-large',
  'world-trivial',
  'world-unsolvable',
] as const;

export type WorldFaultCode = (typeof WORLD_FAULT_CODES)[number];

/**
 * Something wrong with a world: where, what was expected, what is there, what to change. The path runs through a world
 * file: `goods`, `you` and `traders` are keyed by id.
 */
export interface WorldFault {
  readonly code: WorldFaultCode;
  readonly grade: 'error' | 'caution';
  readonly path: readonly (string | number)[];
  /** Point at the key itself, not at its value. */
  readonly atKey?: boolean;
  readonly expected: string;
  readonly received: string;
  readonly mend: string;
}

/** A fault that stops the world from being played. */
export const error = (fault: Omit<WorldFault, 'grade'>): WorldFault => ({ grade: 'error', ...fault });
/** A fault that can be lived with. */
export const caution = (fault: Omit<WorldFault, 'grade'>): WorldFault => ({ grade: 'caution', ...fault });

/** Where a trader stands in a world file. */
export const placeOfTrader = (pupilId: string, traderId: string): readonly string[] =>
  traderId === pupilId ? ['you'] : ['traders', traderId];
