import type { EstimateActivity, EstimateScore, EstimateWorking } from '../../shared/activities/scorers.ts';
import { say, tellNumber } from '../../shared/words/index.ts';
import { timesOff, unitName, type EstimateWords } from './estimate-view.ts';

/** From this many doublings off an answer among comparisons is no longer next to the right one. */
const NEXT_ONE = 2.5;

const wayOf = (words: EstimateWords, doublings: number): string =>
  say(doublings > 0 ? words.wayLong : words.wayShort);

const placeIn = (activity: EstimateActivity, id: string): number =>
  activity.choices.findIndex((choice) => choice.id === id);

/** The first sentence of the record card: how near, in words. */
export function verdictOf(
  activity: EstimateActivity,
  words: EstimateWords,
  { working }: EstimateScore,
): string {
  const told: EstimateWorking = working;
  switch (told.how) {
    case 'choose': {
      if (told.chosen === told.record) return say(words.saysChooseRight);
      const steps = placeIn(activity, told.chosen) - placeIn(activity, told.record);
      if (Math.abs(steps) === 1 && told.doublingsOff < NEXT_ONE) return say(words.saysChooseNear);
      return say(words.saysChooseFar, { times: timesOff(told.doublingsOff), way: wayOf(words, steps) });
    }
    case 'number':
      if (told.nearness === 'inside') return say(words.saysInside);
      if (told.nearness === 'near') return say(words.saysNear);
      return say(words.saysFar, { times: timesOff(told.doublingsOff), way: wayOf(words, told.doublingsOff) });
    case 'interval': {
      const held = say(words.saysHeld, { held: Math.round(100 * told.held) });
      const own = Math.log2(told.upper / told.lower);
      // The record's own range costs its width and what it misses; its width is that of 80 cases in 100.
      const whole = (2 * 1.2815516 * Math.log2(activity.record.high / activity.record.low)) / (2 * 1.6448536);
      const width =
        own > 1.4 * whole ? words.saysTooWide : own < whole / 1.4 ? words.saysTooNarrow : words.saysFits;
      return `${held} ${say(width)}`;
    }
    case 'hands':
      return say(words.saysHands, { agreeing: told.agreeing, count: told.hands });
    case 'numbers': {
      const off = told.crowd.medianDoublingsOff;
      if (off === 0) return say(words.classMiddleInside);
      if (off <= 1) return say(words.classMiddleNear);
      const isMore = told.crowd.median > activity.record.middle ? 1 : -1;
      return say(words.classMiddleOff, { times: timesOff(off), way: wayOf(words, isMore) });
    }
    case 'bins':
      return say(words.classBinMiddle, {
        where: told.middle
          .map((index) => {
            const bin = told.bins[index];
            return bin === undefined
              ? ''
              : say(words.fromTo, {
                  low: tellNumber(bin.from),
                  high: tellNumber(bin.to),
                  unit: unitName(activity, words, bin.to),
                });
          })
          .join(' | '),
      });
    case 'nothing':
      return '';
    default:
      return told satisfies never;
  }
}

const two = (value: number): string => value.toFixed(2).replace('-', '−');

/** How the score is worked out, for those old enough; null where there is none. */
export function workingOf(words: EstimateWords, { score, working }: EstimateScore): string | null {
  if (score === null) return null;
  const told: EstimateWorking = working;
  switch (told.how) {
    case 'choose':
      return say(words.workingChoose, {
        off: two(told.doublingsOff),
        stake: two(told.doublingsAtStake),
        score: two(score),
      });
    case 'number':
      return say(words.workingNumber, {
        off: two(Math.abs(told.doublingsOff)),
        stake: two(told.doublingsAtMiddle),
        score: two(score),
      });
    case 'interval':
      return say(words.workingInterval, {
        cost: two(told.cost),
        recordCost: two(told.recordCost),
        referenceCost: two(told.referenceCost),
        score: two(score),
      });
    case 'numbers':
    case 'hands':
    case 'bins':
      return say(words.workingClass, { score: two(score) });
    case 'nothing':
      return null;
    default:
      return told satisfies never;
  }
}
