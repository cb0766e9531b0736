import { uniform, uniformBelow, type Stream } from '../../chance/index.ts';
import { fromEnds, gapOf, recordInterval, referenceInterval } from '../../estimating/index.ts';
import type { EstimateActivity } from './activity.ts';
import type { EstimatePlay } from './play.ts';
import { MISSED_SHARE, recordChoice, rightRange } from './score.ts';

const CLASS = 30;

/** The play that agrees with the record, in the way the youngest are asked. */
export function recordEstimate(activity: EstimateActivity): EstimatePlay {
  const { id, asks, choices, record } = activity;
  const how = asks[0]?.how ?? 'number';
  switch (how) {
    case 'choose':
      return { activity: id, choice: choices[recordChoice(activity)]?.id ?? '' };
    case 'number':
      return { activity: id, number: record.middle };
    case 'interval':
      return { activity: id, interval: recordInterval(fromEnds(record), MISSED_SHARE) };
    default:
      return how satisfies never;
  }
}

/**
 * A class that guesses: each knows how far from the middle the answer lies, but not on which side. Choices fall on the
 * record's or on its mirror image; numbers evenly by ratio between them; an interval is the best for one who does not
 * know the side, a little shifted by chance.
 */
export function guessEstimate(activity: EstimateActivity, chance: Stream): EstimatePlay {
  const { id, asks, choices, record, line } = activity;
  const how = asks[uniformBelow(chance, asks.length)]?.how ?? 'number';
  switch (how) {
    case 'choose': {
      const right = recordChoice(activity);
      let rightHands = 0;
      for (let hand = 0; hand < CLASS; hand += 1) rightHands += uniformBelow(chance, 2);
      const mirror = choices[choices.length - 1 - right];
      const home = choices[right];
      if (home === undefined || mirror === undefined) return { activity: id };
      return { activity: id, hands: { [home.id]: rightHands, [mirror.id]: CLASS - rightHands } };
    }
    case 'number': {
      const gap = gapOf(rightRange(activity), line);
      const numbers = Array.from({ length: CLASS }, () => gap.from * (gap.to / gap.from) ** uniform(chance));
      return { activity: id, numbers };
    }
    case 'interval': {
      const { lower, upper } = referenceInterval(fromEnds(record), line, MISSED_SHARE);
      const shift = 1 + (uniform(chance) - 0.5) / 50;
      return { activity: id, interval: { lower: lower * shift, upper: upper * shift } };
    }
    default:
      return how satisfies never;
  }
}
