import type { AgeGroup, Framework } from '../../shared/curriculum/index.ts';
import { BANDS } from '../../shared/library/index.ts';
import { catalogues } from '../../shared/words/index.ts';

interface Choice {
  readonly name: string;
  readonly label: string;
  readonly options: readonly { readonly value: string; readonly text: string }[];
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const sorted = (words: Iterable<string>): readonly string[] => [...new Set(words)].toSorted();

/** What the list of outcomes may be narrowed by: only what some outcome has. */
export function browseChoices(
  listed: readonly { readonly framework: Framework; readonly groups: readonly AgeGroup[] }[],
): readonly Choice[] {
  const words = catalogues.en.outcomes;
  const groups = listed.flatMap((each) => each.groups);
  const parts = groups.flatMap(({ subjects }) => subjects);
  const met = new Set(groups.flatMap(({ bands }) => bands));
  const kinds = parts.flatMap(({ outcomes }) => outcomes.flatMap((row) => row.kinds));
  return [
    {
      name: 'framework',
      label: words.browseFramework,
      options: listed.map(({ framework }) => ({ value: framework.id, text: framework.name })),
    },
    {
      name: 'age',
      label: words.browseAge,
      options: BANDS.filter((band) => met.has(band)).map((band) => ({
        value: band,
        text: catalogues.en.agesOf([band]),
      })),
    },
    {
      name: 'subject',
      label: words.browseSubject,
      options: sorted(parts.map(({ subject }) => subject)).map((subject) => ({
        value: subject,
        text: capital(catalogues.en.subjectNames[subject] ?? subject),
      })),
    },
    {
      name: 'kind',
      label: words.browseKind,
      options: sorted(kinds).map((kind) => ({ value: kind, text: capital(kind) })),
    },
  ];
}
