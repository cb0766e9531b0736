export { BANDS, youngest, youngestAge, type Band } from './bands.ts';
export {
  ATTRIBUTES,
  pitOfFind,
  type Attribute,
  type BandLimits,
  type Find,
  type Library,
  type Pit,
  type Site,
  type Source,
  type Vocabulary,
} from './library.ts';
export type { MakingEvidence, MakingSource } from './making-evidence.ts';
export {
  NO_ROWS,
  type AdaptationRow,
  type KitRow,
  type MistakenRow,
  type NotesRow,
  type NotesRows,
  type TalkRow,
} from './notes-rows.ts';
export { drawable } from './drawable.ts';
export { looksLike } from './looks-like.ts';
export { readBands } from './read-bands.ts';
export { readClaimRules } from './read-claim-rules.ts';
export { readComparisons, type Comparison } from './read-comparisons.ts';
export type { PhotoFiles } from './read-photos.ts';
export { readContent, type ContentFile, type ReadContent } from './read-content.ts';
export { readCounts } from './read-counts.ts';
export { readCsv } from './read-csv.ts';
export { readFindsTable, TABLE_COLUMNS } from './read-finds-table.ts';
export { readFramework, type FrameworkWords } from './read-framework.ts';
export { readMakingFigures } from './read-making-figures.ts';
export { dayEntries, dayFile } from './day-file.ts';
export { editDay } from './edit-day.ts';
export { isDayFile, readDay } from './read-day.ts';
export { readGlossary } from './read-glossary.ts';
export { readHazards } from './read-hazards.ts';
export { readNotes, type NotesKnown } from './read-notes.ts';
export { readSituation } from './read-situation.ts';
export { readSite, siteFile, type TableText } from './read-site.ts';
export { readSources } from './read-sources.ts';
export { readStepsFile, type StepsFile } from './read-steps.ts';
export { readVocabulary } from './read-vocabulary.ts';
export { readWorld, worldFrom } from './read-world.ts';
export { readYamlFile, type ReadFile } from './read-yaml-file.ts';
export { slug } from './slug.ts';
export { tradeWords } from './trade-words.ts';
export { STATUSES, type Status } from './status.ts';
