import type { ScoredKind } from '../kind.ts';
import type { SortActivity } from './activity.ts';
import { asksSort } from './asks.ts';
import { compileSort } from './compile.ts';
import { paperSort } from './paper.ts';
import { sortPlay, type SortPlay } from './play.ts';
import { guessSort, recordSort } from './plays.ts';
import { sortBlock, type SortBlock } from './schema.ts';
import { startSort } from './starter.ts';
import { scoreSort, type SortScore } from './score.ts';

export const sort: ScoredKind<SortBlock, SortActivity, SortPlay, SortScore> = {
  isScored: true,
  starter: startSort,
  schema: sortBlock,
  playSchema: sortPlay,
  compile: compileSort,
  score: scoreSort,
  record: recordSort,
  guess: guessSort,
  paper: paperSort,
  numbers: ({ finds }) => [{ value: finds.length, form: 'whole', what: 'things', path: ['finds'] }],
  asks: asksSort,
  shows: ({ finds }) => finds.map(({ drawing }) => drawing),
};
