export { cardsToMove } from './cards-to-move.ts';
export { choose } from './choose.ts';
export { countForJson, countOrders, type OrderCount } from './count-orders.ts';
export { firstBroken, type BrokenPair } from './first-broken.ts';
export { freePairs, stepRooms, type FreePair, type StepRoom } from './free-pairs.ts';
export { kendallTau, type KendallTau } from './kendall-tau.ts';
export { ordersReport, type OrdersReport } from './orders-report.ts';
export { readLaid, type Laid, type Laying } from './laying.ts';
export {
  comesBefore,
  orderedPairs,
  readSteps,
  type Precedence,
  type ReadSteps,
  type Step,
} from './precedence.ts';
export { restrictSteps } from './restrict-steps.ts';
export { dealSteps, guessOrder, listedOrder, sampleOrder } from './sample-order.ts';
export { scoreOrder, type OrderScore } from './score-order.ts';
