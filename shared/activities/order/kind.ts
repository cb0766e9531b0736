import type { ScoredKind } from '../kind.ts';
import type { OrderActivity } from './activity.ts';
import { compileOrder } from './compile.ts';
import { paperOrder } from './paper.ts';
import { orderPlay, type OrderPlay } from './play.ts';
import { guessLaid, recordLaid } from './plays.ts';
import { startOrder } from './starter.ts';
import { orderBlock, type OrderBlock } from './schema.ts';
import { scoreLaid, type LaidScore } from './score.ts';

export const order: ScoredKind<OrderBlock, OrderActivity, OrderPlay, LaidScore> = {
  isScored: true,
  starter: startOrder,
  schema: orderBlock,
  playSchema: orderPlay,
  compile: compileOrder,
  score: scoreLaid,
  record: recordLaid,
  guess: guessLaid,
  paper: paperOrder,
  numbers: ({ steps }) => [{ value: steps.length, form: 'whole', what: 'steps', path: ['steps'] }],
  // Cards of a making, laid from first to last.
  asks: ({ steps }) => ({ met: ['process-steps', 'before-after'], things: steps.length }),
  shows: ({ of }) => (of === null ? [] : [of.drawing]),
};
