import { say } from '../../shared/words/say.ts';
import type { site } from '../../shared/words/en/site.ts';
import type { CopyState } from './register.ts';

/** The words of the site about its copy, as they stand in the page. */
export type CopyWords = Pick<typeof site, 'offlineKeeping' | 'offlineReady' | 'offlineNewer' | 'offlineNone'>;

const when = new Intl.DateTimeFormat('en-GB', { dateStyle: 'long', timeStyle: 'short' });
const dateOf = (iso: string): string => when.format(new Date(iso));

/** What a page says of the copy on this device: what it holds, when it was made, and whether a newer one waits. */
export function tellCopy(copy: CopyState, words: CopyWords): string {
  if (copy.state === 'keeping') return words.offlineKeeping;
  if (copy.state === 'none') return words.offlineNone;
  const { kept, newer } = copy;
  return [
    say(words.offlineReady, {
      count: kept.lessons,
      date: dateOf(kept.made),
      size: Math.round(kept.bytes / 1_000_000),
    }),
    ...(newer === null ? [] : [say(words.offlineNewer, { date: dateOf(newer.made) })]),
  ].join(' ');
}
