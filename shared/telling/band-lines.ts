import { isScored, type Activity, type ActivityOf, type KindName } from '../activities/index.ts';
import { isYounger } from '../glossary/index.ts';
import type { Band } from '../library/index.ts';
import { catalogues } from '../words/index.ts';
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

/** What one activity asks of some bands, in short sentences. */
export const activityLines = <K extends KindName>(
  activity: ActivityOf<K> & { kind: K },
  bands: readonly Band[],
): readonly string[] => [
  ...(ofKind[activity.kind]?.(activity, bands) ?? []),
  ...(!isScored(activity)
    ? [words.noScore]
    : [bands.some((band) => SHOWS_WORKING[band]) ? words.workingShown : words.workingHidden]),
];

/** What a lesson asks of some bands: each sentence once, then how its words are told. */
export const bandLines = (activities: readonly Activity[], bands: readonly Band[]): readonly string[] => [
  ...new Set([
    ...activities.flatMap((activity) => activityLines(activity, bands)),
    bands.some((band) => isYounger(band)) ? words.wordsYounger : words.wordsOlder,
    words.own,
  ]),
];
