import type { Locator } from '@playwright/test';
import { idsOf } from './ids-of.ts';
import type { PupilHands } from './pupil-hands.ts';

const ASKS = ['before', 'weighs', 'after'] as const;

/** Stands, weighs, and stands elsewhere; where no stances are offered, only weighs. */
export async function finishTalk(talk: Locator, { press }: PupilHands): Promise<object> {
  const play = { before: {}, after: {}, weighs: {} };
  for (const asks of ASKS) {
    const choices = talk.locator(`[data-asks="${asks}"] [data-choice]`);
    if (asks !== 'weighs' && (await choices.count()) === 0) continue;
    const ids = await idsOf(choices, 'data-choice');
    const choice = (asks === 'after' ? ids.at(-1) : ids[0]) ?? '';
    await press(talk.locator(`[data-asks="${asks}"] [data-choice="${choice}"]`));
    play[asks] = { [choice]: 1 };
  }
  return play;
}
