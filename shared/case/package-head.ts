import type { Framework } from '../curriculum/index.ts';
import { slug } from '../library/slug.ts';
import { caseWords } from '../words/en/case.ts';
import { PACKAGE_SOURCE } from './item-outcome.ts';
import type { ReadPackage } from './package-schema.ts';

/** The package itself as a source. */
function packageSource({ CFDocument }: ReadPackage): Framework['sources'][number] {
  const { title, creator, identifier, officialSourceURL } = CFDocument;
  const isAddress = /^https?:\/\/\S+$/.test(officialSourceURL ?? '');
  return {
    id: PACKAGE_SOURCE,
    citation: caseWords.packageCitation(creator, title, identifier),
    seen: caseWords.packageSeen,
    url: isAddress ? (officialSourceURL ?? null) : null,
  };
}

const idOf = (title: string): string => {
  const word = slug(title)
    .replaceAll(/[^a-z0-9-]/g, '')
    .replace(/^[^a-z]+/, '');
  return word === '' ? 'framework' : word;
};

/**
 * A framework without its stages and outcomes, from the document of a package.
 *
 * @param isAnothers Some outcome is not ours, so the package is a source.
 */
export function packageHead(read: ReadPackage, isAnothers: boolean): Omit<Framework, 'stages' | 'outcomes'> {
  const { title, publisher = '', version = '', description = '', extensions } = read.CFDocument;
  const shared = { name: title, publisher, version };
  const more = isAnothers ? [packageSource(read)] : [];
  const own = extensions?.pitlore;
  if (own !== undefined) {
    const { framework: id, country, licence, agesKnown, sources } = own;
    const kept = sources.filter((source) => more.length === 0 || source.id !== PACKAGE_SOURCE);
    return { ...shared, id, country, licence, agesKnown, sources: [...kept, ...more], note: description };
  }
  return {
    ...shared,
    id: idOf(title),
    country: '',
    licence: '',
    note: caseWords.packageNote,
    agesKnown: caseWords.gradesKnown,
    sources: more,
  };
}
