export {
  answer,
  answerInto,
  giveColumn,
  givePit,
  giveUnit,
  LEAVE_ROW_OUT,
  NO_ANSWERS,
  type Answers,
} from './answers.ts';
export { FIELDS, UNITS, type Field, type Unit } from './fields.ts';
export { readFindsIn, type FindsIn, type RowIn } from './finds-in.ts';
export type { ColumnGuess } from './guess-columns.ts';
export { INTO_REASONS, type IntoQuestion, type IntoReason } from './into-question.ts';
export { intoSite, type IntoSite, type RowInto } from './into-site.ts';
export { REASONS, type Proposal, type Question, type Reason } from './question.ts';
export { readFindsInWords, type FindsInWords } from './read-words.ts';
export { writeFindsTable } from './write-table.ts';
export { siteFiles, writeInto, type SiteFiles } from './write-into.ts';
export { siteHead, writeSite, type SiteHead } from './write-site.ts';
export { decodeText, type Encoding } from './decode-text.ts';
export { tellGuesses, type GuessTold } from './tell-guesses.ts';
export { prepareFindsIn, type Prepared } from './prepare.ts';
