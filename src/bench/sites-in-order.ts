import type { ContentFile } from '../../shared/library/index.ts';
import type { Offer } from './protocol.ts';

const SITE_FILE = /^sites\/([^/]+)\.yaml$/;

/**
 * The sites to draft from, the lead's own last. One whose file has just been taken in is among them before it has been
 * read: until then another would be drafted from, unasked.
 *
 * @example sitesInOrder([{ value: 'wendle-marsh', means: 'Wendle Marsh' }], []).length // 1
 */
export function sitesInOrder(sites: readonly Offer[], own: readonly ContentFile[]): readonly Offer[] {
  const ownIds = own.flatMap(({ path }) => SITE_FILE.exec(path)?.[1] ?? []);
  const unread = ownIds.filter((id) => !sites.some(({ value }) => value === id));
  return [
    ...sites.toSorted((a, b) => Number(ownIds.includes(a.value)) - Number(ownIds.includes(b.value))),
    ...unread.map((id) => ({ value: id, means: id })),
  ];
}
