import { nearest } from '../lesson/nearest.ts';
import type { Find, Pit, Site } from '../library/library.ts';
import { findsIntoWords as words } from '../words/en/finds-into.ts';
import type { Answers } from './answers.ts';
import type { RowIn } from './finds-in.ts';
import type { Proposal } from './question.ts';
import { pitName } from './row-names.ts';
import type { Place } from './settle-pits.ts';

/** A place in a site: one it has, or one the lead wants made. */
export interface PlaceInto extends Place {
  readonly isNew: boolean;
}

/** Where a row goes, or what is to be asked of it. */
export type PlaceRead =
  | { readonly place: PlaceInto }
  | {
      readonly place: null;
      readonly reason: 'place-not-said' | 'place-not-there';
      readonly asked: string;
      readonly proposals: readonly Proposal[];
    };

export const placeKey = ({ pit, context }: Place): string => `${pit}/${context}`;
const NEW = ' new';
/** More fills than this a lead does not choose from at a glance. ASM. */
const MOST_FILLS = 6;

const pitWith = (site: Site, context: number): Pit | undefined =>
  site.pits.find(({ fills }) => fills.some((fill) => fill.context === context));

/** The fill whose number is nearest, of some pits; a number that names a cut is nearest to that pit's own. */
function nearestFill(pits: readonly Pit[], context: number): Place | null {
  const cut = pits.filter((pit) => pit.cut === context);
  const fills = (cut.length > 0 ? cut : pits).flatMap((pit) =>
    pit.fills.map((fill) => ({ pit: pit.id, context: fill.context })),
  );
  return fills.toSorted((a, b) => Math.abs(a.context - context) - Math.abs(b.context - context))[0] ?? null;
}

/** An answer as it is kept or as a lead writes it: `P2/1199 new`, "P2 1201", "1201", "P2". */
function readAnswer(written: string, asked: Place, site: Site): PlaceInto {
  const isNew = written.endsWith(NEW);
  const bare = (isNew ? written.slice(0, -NEW.length) : written).trim();
  const ownPit = (name: string): string | undefined =>
    site.pits.find(({ id }) => id.toLowerCase() === name.toLowerCase())?.id;
  const [, first = '', last = ''] = /^(.+?)[\s/,]+(\d{1,6})$/.exec(bare) ?? [];
  // "Pit 2" is a pit, "Pit 2, 201" and "A 201" are a pit and a context.
  const isBoth = first !== '' && (/\d/.test(first) || ownPit(first) !== undefined);
  const number = isBoth ? last : /^\d{1,6}$/.test(bare) ? bare : null;
  const context = number === null ? asked.context : Number(number);
  const named = isBoth ? first : number === null ? bare : null;
  const pit = named === null ? (pitWith(site, context)?.id ?? asked.pit) : (pitName(named) ?? asked.pit);
  return { pit: ownPit(pit) ?? pit, context, isNew };
}

/** True where a site has the fill. */
const has = (site: Site, { pit, context }: Place): boolean =>
  site.pits.some(({ id, fills }) => id === pit && fills.some((fill) => fill.context === context));

/** A context numbers one fill of a site, and a fill is no cut. */
const mayBeMade = (site: Site, { context }: Place): boolean =>
  pitWith(site, context) === undefined && !site.pits.some(({ cut }) => cut === context);

const proposal = (place: Place, label: string, isNew = false): Proposal => ({
  value: `${placeKey(place)}${isNew ? NEW : ''}`,
  label,
});

/** What may be meant by a place that the site does not have: the nearest it has first. */
function proposalsFor(site: Site, place: Place, isPitSaid: boolean): readonly Proposal[] {
  const { pit, context } = place;
  const own = site.pits.find(({ id }) => id === pit);
  const holder = pitWith(site, context);
  const offers: Proposal[] = [];
  if (holder !== undefined)
    offers.push(proposal({ pit: holder.id, context }, words.asTheSite(context, holder.id)));
  const near = nearestFill(own === undefined ? site.pits : [own], context);
  if (near !== null && near.context !== context)
    offers.push(proposal(near, words.nearestFill(near.context, near.pit)));
  const named =
    isPitSaid && own === undefined
      ? nearest(
          pit,
          site.pits.map(({ id }) => id),
        )
      : null;
  const called = site.pits.find(({ id }) => id === named && id !== near?.pit);
  const likeIt = called === undefined ? null : nearestFill([called], context);
  if (likeIt !== null && likeIt.context !== context)
    offers.push(proposal(likeIt, words.likeName(likeIt.context, likeIt.pit)));
  if (mayBeMade(site, place)) {
    const into = own?.id ?? near?.pit;
    if (into !== undefined) offers.push(proposal({ pit: into, context }, words.newFill(context, into), true));
    if (own === undefined) offers.push(proposal(place, words.newPit(context, pit), true));
  }
  return offers.filter(({ value }, index) => offers.findIndex((each) => each.value === value) === index);
}

/** False where neither the row nor its list tells a place: what was guessed is a pit for all of it. */
export const isPlaceSaid = ({ guessed }: RowIn): boolean =>
  guessed.pit === undefined || guessed.context === undefined;

/** What equal answers about places are kept by: what the row says, and no guess, which may be another one next time. */
export function placeAsked(row: RowIn, find: Find): string {
  if (!isPlaceSaid(row)) return words.noPlace();
  return row.guessed.pit === undefined ? placeKey(find) : String(find.context);
}

/**
 * Where a row's find lies in a site: where it says, where the lead has said, or a question with what may be meant. A
 * place the site does not have is made only where the lead says so.
 */
export function readPlace(site: Site, row: RowIn, find: Find, answers: Answers): PlaceRead {
  const said: Place = { pit: find.pit, context: find.context };
  const given = answers.into[`${row.row}:place`] ?? answers.into[placeAsked(row, find)];
  const place = given === undefined ? { ...said, isNew: false } : readAnswer(given, said, site);
  if (!isPlaceSaid(row) && given === undefined) {
    const fills = site.pits.flatMap((pit) => pit.fills.map(({ context }) => ({ pit: pit.id, context })));
    const [only] = fills;
    if (only !== undefined && fills.length === 1) return { place: { ...only, isNew: false } };
    return {
      place: null,
      reason: 'place-not-said',
      asked: words.placeNotSaid(site.name),
      proposals: fills
        .slice(0, MOST_FILLS)
        .map((fill) => proposal(fill, words.fillOf(fill.context, fill.pit))),
    };
  }
  if (has(site, place)) return { place: { ...place, isNew: false } };
  if (place.isNew && mayBeMade(site, place)) return { place };
  const isPitThere = site.pits.some(({ id }) => id === place.pit);
  const holder = pitWith(site, place.context);
  const isPitSaid = row.guessed.pit === undefined;
  return {
    place: null,
    reason: 'place-not-there',
    asked:
      holder !== undefined
        ? words.otherPit(place.context, holder.id, place.pit)
        : isPitThere
          ? words.fillNotThere(place.context, place.pit)
          : isPitSaid
            ? words.pitNotThere(place.pit, place.context)
            : words.contextNotThere(place.context),
    proposals: proposalsFor(site, place, isPitSaid),
  };
}
