import type { Drawing } from '../../shared/drawing/index.ts';

/** The drawing of a step's card; null where there is none, and the card has its words alone. */
export const drawnStep = (_step: string | null): Drawing | null => null;
