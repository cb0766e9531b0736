import { agesOf } from './en/ages.ts';
import { bands } from './en/bands.ts';
import { barter } from './en/barter.ts';
import { barterClass } from './en/barter-class.ts';
import { barterPaper } from './en/barter-paper.ts';
import { barterRefusals } from './en/barter-refusals.ts';
import { bench, fieldNames } from './en/bench.ts';
import { compare } from './en/compare.ts';
import { dayNow, dayPapers, dropInPage } from './en/day-papers.ts';
import { dayForm, daySheet } from './en/day-sheet.ts';
import { drawings } from './en/drawings.ts';
import { estimatePapers } from './en/estimate-papers.ts';
import { estimate } from './en/estimate.ts';
import { handlePapers } from './en/handle-papers.ts';
import { handle } from './en/handle.ts';
import { evaluation } from './en/evaluation.ts';
import { help, problemMeanings } from './en/help.ts';
import { kitWords } from './en/kit-list.ts';
import { notes } from './en/notes.ts';
import { order } from './en/order.ts';
import { outcomes, subjectNames } from './en/outcomes.ts';
import { printPack } from './en/print-pack.ts';
import { safetyPapers } from './en/safety-papers.ts';
import { site } from './en/site.ts';
import { sort } from './en/sort.ts';
import { talk } from './en/talk.ts';
import { stationWords } from './en/station-cards.ts';

export { activitySteps, signWords, stationSteps } from './en/station-cards.ts';
export { draftHead, frameworkName, signLines } from './en/safety-papers.ts';
export type { Entry, Template, Words } from './entry.ts';
export { say } from './say.ts';
export { tellNumber } from './tell-number.ts';
export { wordsFor } from './words-for.ts';

/** Every language there is; a second one is a folder like `en` and a line here. */
export const catalogues = {
  en: {
    bands,
    barter,
    barterClass,
    barterPaper,
    barterRefusals,
    bench,
    compare,
    dayForm,
    dayNow,
    dayPapers,
    daySheet,
    drawings,
    dropInPage,
    estimate,
    estimatePapers,
    fieldNames,
    handle,
    handlePapers,
    evaluation,
    help,
    problemMeanings,
    kitWords,
    notes,
    order,
    outcomes,
    printPack,
    safetyPapers,
    site,
    sort,
    talk,
    stationWords,
    subjectNames,
    agesOf,
  },
} as const;
