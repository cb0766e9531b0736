import type { CarriedVisit } from './carried-visit.ts';
import { picturesIn, siteNamed, sitesOf } from './sites-of.ts';

/** What a visit says of one thing in a folder: that it is this, or that it is not there. */
export interface Claim {
  readonly about: string;
  /** The site whose matter it is. */
  readonly site: string;
  readonly is: string | Uint8Array | null;
}

/** What a visit needs to be so in a folder that it shares, or its files that it would lose there: a lesson has the site that it names. */
export type Claims =
  | { readonly claims: readonly Claim[]; readonly unnamed: null }
  | { readonly claims: null; readonly unnamed: readonly string[] };

/**
 * What must hold in a folder for a visit to come out of it as it went in. What it does not have counts too: a lesson that goes
 * by the finds of the site it is opened on may not meet another's finds of that name.
 */
export function claimsOf({ text, files, photos }: CarriedVisit): Claims {
  const id = siteNamed(text);
  const sites = sitesOf(files, photos);
  const own = sites.find((each) => each.id === id);
  const strangers = [
    ...files.filter((file) => own?.files.includes(file) !== true).map(({ file }) => file),
    ...[...photos.keys()].filter((name) => own?.photos.has(name) !== true),
  ];
  if (strangers.length > 0) return { claims: null, unnamed: strangers };
  const claim = (about: string, is: Claim['is']): Claim => ({ about, site: id, is });
  const [site] = own?.files ?? [];
  const pictures = site === undefined ? [] : [...picturesIn(site.text)];
  return {
    unnamed: null,
    claims: [
      ...(id === ''
        ? []
        : [
            claim(
              `site ${id}`,
              files
                .map(({ path }) => path)
                .toSorted()
                .join(' '),
            ),
          ]),
      ...files.map(({ path, text: written }) => claim(path, written)),
      ...pictures.map((name) => claim(`sites/photos/${name}`, photos.get(name) ?? null)),
    ],
  };
}

const sameBytes = (a: Uint8Array, b: Uint8Array): boolean =>
  a.length === b.length && a.every((byte, index) => byte === b[index]);

/** True where two visits say the same of one thing. */
export const isSameClaim = (a: Claim['is'], b: Claim['is']): boolean =>
  a instanceof Uint8Array && b instanceof Uint8Array ? sameBytes(a, b) : a === b;
