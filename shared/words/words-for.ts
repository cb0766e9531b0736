import type { Band } from '../library/bands.ts';
import type { Entry, Template, Words } from './entry.ts';

const resolve = (entry: Entry, band: Band): Template =>
  typeof entry === 'object' && 'otherwise' in entry ? (entry.bands[band] ?? entry.otherwise) : entry;

/** A section of the catalogue as one band reads it. */
export function wordsFor<Section extends Readonly<Record<string, Entry>>>(
  section: Section,
  band: Band,
): Words<Section> {
  const resolved = Object.fromEntries(
    Object.entries(section).map(([key, entry]) => [key, resolve(entry, band)]),
  );
  // The keys are those of the section.
  return resolved as Words<Section>;
}
