import { isScored, type Activity, type ActivityOf, type KindName } from '../activities/index.ts';
import { isYounger } from '../glossary/index.ts';
import type { Band } from '../library/index.ts';
import { catalogues, say } from '../words/index.ts';
import { SHOWS_WORKING } from './shows-working.ts';

const words = catalogues.en.bands;
const asked = { choose: words.asChoose, number: words.asNumber, interval: words.asInterval };

/** What a kind asks otherwise of one band than of another; kinds that ask all alike have no entry. */
const ofKind: {
  readonly [K in KindName]?: (activity: ActivityOf<K>, bands: readonly Band[]) => readonly string[];
} = {
  barter: ({ play }, bands) =>
    play !== 'class' && bands.some((band) => band === '11-14' || band === '14-16') ? [words.viewsShown] : [],
  estimate: ({ asks }) => {
    const [ask] = asks;
    return asks.length > 1 ? [words.asMany] : ask === undefined ? [] : [asked[ask.how]];
  },
};

const kindLines = <K extends KindName>(
  activity: ActivityOf<K> & { kind: K },
  bands: readonly Band[],
): readonly string[] => ofKind[activity.kind]?.(activity, bands) ?? [];

const workingLine = (bands: readonly Band[]): string =>
  bands.some((band) => SHOWS_WORKING[band]) ? words.workingShown : words.workingHidden;

/** What one activity asks of some bands, in short sentences. */
export const activityLines = (activity: Activity, bands: readonly Band[]): readonly string[] => [
  ...kindLines(activity, bands),
  isScored(activity) ? workingLine(bands) : words.noScore,
];

/** What a lesson asks of some bands: activity by activity where they are asked otherwise, then what holds for all. */
export function bandLines(activities: readonly Activity[], bands: readonly Band[]): readonly string[] {
  const asks = activities.flatMap((activity) =>
    kindLines(activity, bands).map((line) =>
      activities.length === 1 ? line : say(words.inActivity, { title: activity.title, line }),
    ),
  );
  const told = bands.some((band) => isYounger(band)) ? words.wordsYounger : words.wordsOlder;
  const how = activities.some((activity) => isScored(activity)) ? workingLine(bands) : words.noScore;
  return [...asks, how, told, words.own];
}
