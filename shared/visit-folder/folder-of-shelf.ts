import type { FolderFile } from '../zip/index.ts';
import type { CarriedVisit } from './carried-visit.ts';
import { claimsOf, isSameClaim, type Claim } from './claims-of.ts';
import { folderOfVisit } from './folder-of-visit.ts';
import { safeName } from './safe-name.ts';

/** Why a visit has a folder of its own: its name is another's too; by one site they mean different finds; or it carries files that do not go with the site its lesson names. */
export type WhyApart =
  | { readonly why: 'name' }
  | { readonly why: 'differs'; readonly site: string; readonly other: string }
  | { readonly why: 'unnamed'; readonly files: readonly string[] };

/** A visit in the folder of a shelf; `folder` is '' where it lies with the others. */
export interface PlacedVisit {
  readonly visit: CarriedVisit;
  readonly folder: string;
  readonly apart: WhyApart | null;
}

export interface ShelfFolder {
  readonly files: readonly FolderFile[];
  readonly visits: readonly PlacedVisit[];
}

interface Said extends Claim {
  readonly by: string;
}

const plainly = (name: string): string => safeName(name).normalize('NFC').toLowerCase();

/** A name that none of these is yet: `pit`, else `pit-2`, `pit-3`. */
function freshName(name: string, taken: ReadonlySet<string>): string {
  let fresh = name;
  for (let number = 2; taken.has(plainly(fresh)); number += 1) fresh = `${name}-${number}`;
  return fresh;
}

/**
 * Visits as the files of one content folder. What cannot lie together without one covering the other, or without a visit
 * coming out other than it went in, has a content folder of its own under `apart/`.
 */
export function folderOfShelf(visits: readonly CarriedVisit[]): ShelfFolder {
  const together = new Map<string, FolderFile>();
  const apart: FolderFile[] = [];
  const names = new Set<string>();
  const folders = new Set<string>();
  const said = new Map<string, Said>();

  const whyApart = (visit: CarriedVisit): WhyApart | null => {
    if (names.has(plainly(visit.name))) return { why: 'name' };
    const { claims, unnamed } = claimsOf(visit);
    if (claims === null) return { why: 'unnamed', files: unnamed };
    for (const { about, site, is } of claims) {
      const before = said.get(about);
      if (before !== undefined && !isSameClaim(before.is, is))
        return { why: 'differs', site, other: before.by };
    }
    for (const claim of claims) said.set(claim.about, { ...claim, by: visit.name });
    return null;
  };

  const placed = visits
    .toSorted((a, b) => (a.name < b.name ? -1 : Number(a.name > b.name)))
    .map((visit): PlacedVisit => {
      const why = whyApart(visit);
      const files = folderOfVisit(visit);
      if (why === null) {
        names.add(plainly(visit.name));
        for (const file of files) together.set(file.path, file);
        return { visit, folder: '', apart: null };
      }
      const own = freshName(safeName(visit.name), folders);
      folders.add(plainly(own));
      const folder = `apart/${own}`;
      apart.push(...files.map(({ path, bytes }) => ({ path: `${folder}/${path}`, bytes })));
      return { visit, folder, apart: why };
    });
  return { files: [...together.values(), ...apart], visits: placed };
}
