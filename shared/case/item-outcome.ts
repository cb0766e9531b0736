import type { Framework, Outcome } from '../curriculum/index.ts';
import { slug } from '../library/slug.ts';
import { oursOf } from './item-stage.ts';
import type { ReadItem } from './package-schema.ts';

type Stage = Framework['stages'][number];

const LONGEST_SUMMARY = 200;

/** The id of the source that outcomes of someone else's package have: the package itself. */
export const PACKAGE_SOURCE = 'package';

const shortened = (text: string): string => {
  const flat = text.replace(/\s+/g, ' ').trim();
  return flat.length <= LONGEST_SUMMARY ? flat : `${flat.slice(0, LONGEST_SUMMARY - 1)}…`;
};

/** An item as an outcome of a stage: ours as it was, anyone else's in the publisher's words and with no evidence. */
export function outcomeOf(item: ReadItem, stage: Stage, subjects: readonly string[]): Outcome {
  const own = oursOf(item);
  const code = item.humanCodingScheme ?? null;
  const base = { code, stage: stage.id };
  if (own !== null && 'outcome' in own) {
    const { outcome: id, status, source, never = null, evidence = [] } = own;
    const subject = item.subject?.[0] ?? '';
    return { ...base, id, subject, summary: item.fullStatement, status, source, never, evidence };
  }
  return {
    ...base,
    id: code ?? item.identifier,
    subject: slug((item.subject ?? subjects)[0] ?? ''),
    summary: shortened(item.abbreviatedStatement ?? item.fullStatement),
    status: 'RF',
    source: { ref: PACKAGE_SOURCE, at: code ?? item.identifier },
    never: null,
    evidence: [],
  };
}
