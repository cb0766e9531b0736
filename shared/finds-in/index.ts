export { answer, giveColumn, givePit, giveUnit, LEAVE_ROW_OUT, NO_ANSWERS, type Answers } from './answers.ts';
export { FIELDS, UNITS, type Field, type Unit } from './fields.ts';
export { readFindsIn, type FindsIn, type RowIn } from './finds-in.ts';
export type { ColumnGuess } from './guess-columns.ts';
export type { Proposal, Question, Reason } from './question.ts';
export { readFindsInWords, type FindsInWords } from './read-words.ts';
export { writeFindsTable } from './write-table.ts';
export { siteHead, writeSite, type SiteHead } from './write-site.ts';
