import type { Framework, Outcome } from '../curriculum/index.ts';
import { caseWords } from '../words/en/case.ts';
import type { CasePackage, CfAssociation, CfItem } from './case-package.ts';
import { nameUuid } from './name-uuid.ts';

/** Names within this namespace are ours; a UUID made once, by chance, and never changed. */
const NAMESPACE = 'b0a0c5a2-4f6e-4d0c-9d53-6a1f4c2e7b18';

/** Who an entity is: the same between exports, because it comes from our ids alone. */
const named = (...names: readonly string[]): { readonly identifier: string; readonly uri: string } => {
  const identifier = nameUuid(NAMESPACE, JSON.stringify(names));
  return { identifier, uri: `urn:uuid:${identifier}` };
};

/** A field is left out rather than left empty. */
const filled = <Key extends string>(key: Key, text: string | null): Partial<Record<Key, string>> =>
  // One key of the record, which the type of a computed key does not say.
  text === null || text === '' ? {} : ({ [key]: text } as Partial<Record<Key, string>>);

const outcomeFields = ({ id, status, source, never, evidence }: Outcome): object => ({
  outcome: id,
  status,
  source,
  ...(never === null ? {} : { never }),
  ...(evidence.length === 0 ? {} : { evidence }),
});

/**
 * A framework as a package of the CASE standard, version 1.1: one document, an item for each stage and each outcome,
 * and the tree as associations. What the standard has no field for (ages, status, source, evidence) stands in
 * `extensions`, so that {@link readCasePackage} gives the same framework back. Statements are our summaries, and the
 * document says so.
 *
 * @param changed When the framework last changed: ISO 8601, such as 2026-11-29T08:00:00Z. There is no clock here.
 */
export function writeCasePackage(framework: Framework, changed: string): CasePackage {
  const { id, name, publisher, licence, stages, outcomes } = framework;
  const { country, agesKnown, sources } = framework;
  const lastChangeDateTime = changed;
  const document = { ...named(id), title: name };
  const stageItems = stages.map(({ id: stage, label, from, to }): CfItem => ({
    ...named(id, 'stage', stage),
    fullStatement: label,
    CFItemType: caseWords.stage,
    language: 'en',
    educationLevel: [label],
    lastChangeDateTime,
    extensions: { pitlore: { stage, from, to } },
  }));
  const outcomeItems = outcomes.map((outcome): CfItem => ({
    ...named(id, 'outcome', outcome.id),
    fullStatement: outcome.summary,
    CFItemType: caseWords.outcome,
    ...filled('humanCodingScheme', outcome.code),
    ...(outcome.subject === '' ? {} : { subject: [outcome.subject] }),
    language: 'en',
    educationLevel: [stages.find((stage) => stage.id === outcome.stage)?.label ?? outcome.stage],
    lastChangeDateTime,
    extensions: { pitlore: outcomeFields(outcome) },
  }));
  const linkTo = ({ identifier, uri, fullStatement }: CfItem): CfAssociation['originNodeURI'] => ({
    title: fullStatement,
    identifier,
    uri,
  });
  const child = (
    item: CfItem,
    parent: CfAssociation['originNodeURI'],
    sequenceNumber: number,
  ): CfAssociation => ({
    ...named(id, 'child', item.identifier),
    associationType: 'isChildOf',
    sequenceNumber,
    originNodeURI: linkTo(item),
    destinationNodeURI: parent,
    lastChangeDateTime,
  });
  return {
    CFDocument: {
      ...document,
      creator: caseWords.creator,
      caseVersion: '1.1',
      ...filled('publisher', publisher),
      ...filled('description', framework.note),
      language: 'en',
      ...filled('version', framework.version),
      notes: caseWords.notes(publisher, licence),
      lastChangeDateTime,
      extensions: { pitlore: { framework: id, country, licence, agesKnown, sources } },
    },
    CFItems: [...stageItems, ...outcomeItems],
    CFAssociations: [
      ...stageItems.map((item, index) => child(item, document, index + 1)),
      ...outcomeItems.map((item, index) => {
        const parent = stageItems[stages.findIndex((stage) => stage.id === outcomes[index]?.stage)];
        return child(item, parent === undefined ? document : linkTo(parent), index + 1);
      }),
    ],
  };
}
