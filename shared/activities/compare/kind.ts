import type { ScoredKind } from '../kind.ts';
import type { CompareActivity } from './activity.ts';
import { compileCompare } from './compile.ts';
import { paperCompare } from './paper.ts';
import { numbersInCompare } from './numbers.ts';
import { comparePlay, type ComparePlay } from './play.ts';
import { guessCompare, recordCompare } from './plays.ts';
import { compareBlock, type CompareBlock } from './schema.ts';
import { startCompare } from './starter.ts';
import { scoreCompare, type CompareScore } from './score.ts';

export const compare: ScoredKind<CompareBlock, CompareActivity, ComparePlay, CompareScore> = {
  isScored: true,
  starter: startCompare,
  schema: compareBlock,
  playSchema: comparePlay,
  compile: compileCompare,
  score: scoreCompare,
  record: recordCompare,
  guess: guessCompare,
  paper: paperCompare,
  // What lies in a pit is read as evidence; the pieces of a kind are counted.
  asks: ({ kinds, places }) => ({
    met: ['finds-as-evidence', ...(places === null ? [] : ['two-pits'])],
    things: Math.max(...kinds.flatMap(({ counts }) => counts)),
  }),
  numbers: numbersInCompare,
  shows: ({ pits }) => pits.flatMap(({ finds }) => finds),
};
