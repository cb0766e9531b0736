import type { Sheet } from '../../shared/activities/index.ts';

/** True where there are cards of finds to cut out, so that the line about their scales is wanted. */
export const hasCards = (sheets: readonly Sheet[]): boolean => sheets.some(({ part }) => part === 'cards');
