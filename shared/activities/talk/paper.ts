import type { Sheet } from '../kind.ts';
import type { TalkActivity } from './activity.ts';

/** A talk on paper: a sheet to take a stand on and to write the evidence down, and the notes for whoever leads it. */
export function paperTalk({ title, question, voices, evidence, stances }: TalkActivity): readonly Sheet[] {
  const shared = { title, question, voices, evidence, stances };
  return [
    { part: 'talk-sheet', ...shared },
    { part: 'talk-notes', ...shared },
  ];
}
