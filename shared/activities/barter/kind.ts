import type { ScoredKind } from '../kind.ts';
import type { BarterActivity } from './activity.ts';
import { asksBarter } from './asks.ts';
import { compileBarter } from './compile.ts';
import { paperBarter } from './paper.ts';
import { numbersInBarter } from './numbers.ts';
import { barterPlay, type BarterPlay } from './play.ts';
import { guessBarter, recordBarter } from './plays.ts';
import { barterBlock, type BarterBlock } from './schema.ts';
import { startBarter } from './starter.ts';
import { scoreBarter } from './score.ts';

export const barter: ScoredKind<BarterBlock, BarterActivity, BarterPlay> = {
  isScored: true,
  starter: startBarter,
  schema: barterBlock,
  playSchema: barterPlay,
  compile: compileBarter,
  score: scoreBarter,
  record: recordBarter,
  guess: guessBarter,
  paper: paperBarter,
  asks: asksBarter,
  numbers: numbersInBarter,
  shows: () => [],
};
