import { isKindName, isScoredKind } from '../../shared/activities/index.ts';
import type { Plan, PlanClaim } from '../../shared/compile/index.ts';
import type { Band } from '../../shared/library/index.ts';
import { catalogues } from '../../shared/words/index.ts';
import { statusWords } from '../../shared/telling/status-words.ts';

/**
 * Bands as ages of pupils, the last one counted: bands that join make one range. "7-9" is from 7 up to 9, so its
 * pupils are 7 and 8.
 *
 * @example ageRanges(['5-7', '7-9', '11-14']) // ['5-8', '11-13']
 */
export function ageRanges(bands: readonly Band[]): readonly string[] {
  const ends = bands
    .map((band) => band.split('-').map(Number))
    .map(([from = 0, to = 0]) => ({ from, to }))
    .toSorted((a, b) => a.from - b.from);
  const joined = ends.reduce<readonly { readonly from: number; readonly to: number }[]>((ranges, end) => {
    const last = ranges.at(-1);
    return last !== undefined && last.to >= end.from
      ? [...ranges.slice(0, -1), { from: last.from, to: Math.max(last.to, end.to) }]
      : [...ranges, end];
  }, []);
  return joined.map(({ from, to }) => (to - 1 === from ? `${from}` : `${from}-${to - 1}`));
}

/** An outcome as a term of its framework: our summary, the publisher's code, and how it is known. */
const term = ({ summary, code, frameworkName, source, sourceAt, status }: PlanClaim): object => ({
  '@type': 'DefinedTerm',
  name: summary,
  ...(code === null ? {} : { termCode: code }),
  description: `${source}, ${sourceAt} (${statusWords(status)})`,
  inDefinedTermSet: { '@type': 'DefinedTermSet', name: frameworkName },
});

/** One value alone, several as a list, none not at all. */
const several = (key: string, values: readonly unknown[]): object =>
  values.length === 0 ? {} : { [key]: values.length === 1 ? values[0] : values };

const isScored = ({ grade, evidence }: PlanClaim): boolean =>
  grade === 'practised' &&
  evidence.some(({ kind, by }) => by === 'plan' && isKindName(kind) && isScoredKind(kind));

/**
 * A lesson as schema.org describes one, for catalogues and search: what it is, for whom, how long, and the outcomes it
 * earns. `teaches` is what it practises or teaches, `assesses` only what is practised by a play that is scored (terms of
 * schema.org, RF). No person is named in it.
 */
export const lessonData = ({ title, about, language, bands, minutes, claims }: Plan): object => ({
  '@context': 'https://schema.org',
  '@type': ['LearningResource', 'WebPage'],
  name: title,
  ...(about === null ? {} : { description: about }),
  inLanguage: language,
  learningResourceType: catalogues.en.outcomes.lesson,
  isAccessibleForFree: true,
  timeRequired: `PT${minutes}M`,
  ...several('typicalAgeRange', ageRanges(bands)),
  ...several('educationalLevel', [...new Set(claims.map(({ stage }) => stage))]),
  ...several('teaches', claims.filter(({ grade }) => grade !== 'touched').map(term)),
  ...several('assesses', claims.filter(isScored).map(term)),
});

/**
 * Data as JSON that may stand in a `script` element: no `<` is left that could end it or open a comment.
 *
 * @example dataText({ name: '</script>' }) // '{"name":"\\u003c/script>"}'
 */
export const dataText = (data: object): string => JSON.stringify(data).replaceAll('<', '\\u003c');
