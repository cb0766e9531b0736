export type { Candidate, Draft, DraftProgress, DraftRequest, MeritPart } from './draft.ts';
export { draftSteps, draftVisit } from './draft-visit.ts';
export { draftedKinds } from './drafters.ts';
