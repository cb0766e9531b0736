import type { ActivityOf } from '../activities/index.ts';
import { catalogues, say, tellNumber } from '../words/index.ts';

type Unit = ActivityOf<'estimate'>['unit'];
const words = catalogues.en.estimate;

/** A unit as it follows an amount. @example unitWords('h', 2) // 'hours' */
export const unitWords = (unit: Unit, amount: number): string =>
  say(words[`unit_${unit}`], { count: amount });

/** A worked-out amount with its unit. @example amountWords('h', 26.3) // '26 hours' */
export const amountWords = (unit: Unit, amount: number): string =>
  say(words.amount, { number: tellNumber(amount), unit: unitWords(unit, amount) });
