import type { ComponentChildren } from 'preact';
import type { EstimateActivity, LeverCell } from '../../shared/activities/scorers.ts';
import { say, tellNumber, type Template } from '../../shared/words/index.ts';
import type { estimate } from '../../shared/words/en/estimate.ts';
import type { EstimateStore, EstimateTable } from '../stores/estimate.ts';
import type { ShownLine } from './line-scale.ts';

/** The words of an estimate, resolved for a band. */
export type EstimateWords = Readonly<Record<keyof typeof estimate, Template>>;

export interface EstimateProps {
  readonly lesson: string;
  readonly activity: EstimateActivity;
  readonly words: EstimateWords;
  readonly showsWorking: boolean;
  /** Which middle and spread the band's school has met. */
  readonly statistics: 'middle' | 'mean' | 'range' | 'quartiles';
  /** How the record is known, in words. */
  readonly status: string;
  readonly cells: readonly LeverCell[];
  /** The line the levers are shown on: it holds all that they can give. */
  readonly leverLine: ShownLine;
  /** Drawn in the page: the figures behind the answer, and the strip of work. */
  readonly how?: ComponentChildren;
  readonly strip?: ComponentChildren;
}

/** What the places where an answer is given are handed. */
export interface EntryProps extends Pick<EstimateProps, 'activity' | 'words'> {
  readonly table: EstimateTable;
  readonly store: EstimateStore;
  readonly onSaid: (text: string) => void;
}

/** The unit's name as it follows an amount. @example unitName(activity, words, 1) // 'hour' */
export const unitName = (
  { unit }: Pick<EstimateActivity, 'unit'>,
  words: EstimateWords,
  amount: number,
): string => say(words[`unit_${unit}`], { count: amount });

/** An amount as it was said: more digits than a worked-out one. */
export const saidAs = (amount: number): string => tellNumber(amount, 4);

/** "about 3 times": how far off in words, from doublings. */
export const timesOff = (doublings: number): string => tellNumber(2 ** Math.abs(doublings));

/** A worked-out amount, in whole numbers for those who know no others. @example tellAmount({ wholeTo: 1000 }, 9.3) // '9' */
export const tellAmount = ({ wholeTo }: Pick<EstimateActivity, 'wholeTo'>, amount: number): string =>
  tellNumber(wholeTo !== undefined && amount >= 1 ? Math.round(amount) : amount);

/** A comparison's length, in minutes where it is short of an hour; whole hours for those who know no others. */
export function tellTime(
  words: EstimateWords,
  { wholeTo }: Pick<EstimateActivity, 'wholeTo'>,
  hours: number,
): string {
  if (hours < 1) return say(words.minutesLong, { minutes: tellNumber(hours * 60) });
  if (wholeTo === undefined || Number.isInteger(hours))
    return say(words.hoursLong, { hours: tellNumber(hours, 3) });
  return say(words.hoursAbout, { hours: tellNumber(Math.round(hours), 3) });
}
