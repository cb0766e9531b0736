import type { ScoredKind } from '../kind.ts';
import type { EstimateActivity } from './activity.ts';
import { asksEstimate } from './asks.ts';
import { compileEstimate } from './compile.ts';
import { numbersInEstimate } from './numbers.ts';
import { paperEstimate } from './paper.ts';
import { estimatePlay, type EstimatePlay } from './play.ts';
import { guessEstimate, recordEstimate } from './plays.ts';
import { estimateBlock, type EstimateBlock } from './schema.ts';
import { startEstimate } from './starter.ts';
import { scoreEstimate, type EstimateScore } from './score.ts';

export const estimate: ScoredKind<EstimateBlock, EstimateActivity, EstimatePlay, EstimateScore> = {
  isScored: true,
  starter: startEstimate,
  schema: estimateBlock,
  playSchema: estimatePlay,
  compile: compileEstimate,
  score: scoreEstimate,
  record: recordEstimate,
  guess: guessEstimate,
  paper: paperEstimate,
  asks: asksEstimate,
  forBand: (activity, band) => ({
    ...activity,
    asks: activity.asks
      .filter(({ bands }) => bands.includes(band))
      .map(({ how }) => ({ how, bands: [band] })),
  }),
  numbers: numbersInEstimate,
  shows: ({ find }) => (find === null ? [] : [find.drawing]),
};
