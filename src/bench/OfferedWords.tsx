import type { Offer, Offers } from './protocol.ts';

interface Props {
  readonly offers: Offers | null;
  /** The site the visit names. */
  readonly site: string;
}

/** Which list of words serves which key. */
const LISTS: Readonly<Record<string, string>> = {
  site: 'sites',
  pit: 'pits',
  pits: 'pits',
  finds: 'finds',
  find: 'finds',
  'leave-out': 'finds',
  outcome: 'outcomes',
  source: 'sources',
  holds: 'values',
};

const idOf = (list: string): string => `offered-${list}`;

/** From a key to the id of its list of offered words; null where it has none. */
export const offeredFor =
  (offers: Offers | null) =>
  (key: string): string | null => {
    const list = LISTS[key];
    return offers === null || list === undefined ? null : idOf(list);
  };

/** Words a lead may write in a field, offered as they type: finds and pits of their site, outcomes, sources. */
export function OfferedWords({ offers, site }: Props) {
  if (offers === null) return null;
  const here = offers.sites.find(({ value }) => value === site) ?? offers.sites[0];
  const lists: readonly (readonly [string, readonly Offer[]])[] = [
    ['sites', offers.sites],
    ['pits', here?.pits ?? []],
    ['finds', here?.finds ?? []],
    ['outcomes', offers.outcomes],
    ['sources', offers.sources],
    ['values', Object.values(offers.values).flat()],
  ];
  return (
    <>
      {lists.map(([name, offered]) => (
        <datalist key={name} id={idOf(name)}>
          {offered.map(({ value, means }) => (
            <option key={value} value={value} label={means} />
          ))}
        </datalist>
      ))}
    </>
  );
}
