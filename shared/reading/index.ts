export { countText, syllablesOf, type Counts } from './count.ts';
export { hardReading, type HardReading } from './hard-reading.ts';
export { measure, MEASURES, type Measure } from './measures.ts';
export {
  FEWEST_WORDS,
  readingReport,
  type HardPlace,
  type ReadingReport,
  type ReadingTarget,
} from './reading-report.ts';
export { sentencesOf } from './sentences.ts';
