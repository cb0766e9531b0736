import type { UnscoredKind } from '../kind.ts';
import type { HandleActivity } from './activity.ts';
import { asksHandle } from './asks.ts';
import { compileHandle } from './compile.ts';
import { paperHandle } from './paper.ts';
import { handleForBand } from './for-band.ts';
import { handlePlay, type HandlePlay } from './play.ts';
import { handleBlock, type HandleBlock } from './schema.ts';
import { startHandle } from './starter.ts';
import { sampleHandling, tellHandling, type HandleTold } from './tell.ts';

export const handle: UnscoredKind<HandleBlock, HandleActivity, HandlePlay, HandleTold> = {
  isScored: false,
  starter: startHandle,
  schema: handleBlock,
  playSchema: handlePlay,
  compile: compileHandle,
  tell: tellHandling,
  sample: sampleHandling,
  paper: paperHandle,
  asks: asksHandle,
  forBand: handleForBand,
  numbers: ({ pieces }) => [{ value: pieces.length, form: 'whole', what: 'things', path: ['pieces'] }],
  shows: ({ pieces }) => pieces.map(({ drawing }) => drawing),
  table: ({ table }) => table,
};
