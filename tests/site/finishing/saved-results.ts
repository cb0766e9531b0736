import { readFileSync } from 'node:fs';
import { expect, type Page } from '@playwright/test';
import {
  isScored,
  playSchemas,
  score,
  type Activity,
  type PlayOf,
} from '../../../shared/activities/index.ts';
import type { Plan } from '../../../shared/compile/index.ts';
import type { Done } from './finish-activity.ts';

/** Presses for the answers as a file and reads what was saved. */
export async function savedResults(page: Page): Promise<readonly Done[]> {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the answers as a file' }).click();
  return JSON.parse(readFileSync(await (await download).path(), 'utf8')) as readonly Done[];
}

/** What was done, as a play says it: a comparison by its id, a likeness on the scale of its measure. */
function asPlay(activity: Activity | undefined, done: Done): Done {
  if (activity?.kind === 'estimate' && 'choice' in done)
    return { ...done, choice: activity.choices.find(({ label }) => label === done['choice'])?.id };
  if (activity?.kind === 'compare' && 'likeness' in done) {
    const most = activity.chance?.most ?? 1;
    const shares = Object.entries(done['likeness'] as Readonly<Record<string, number>>);
    return { ...done, likeness: Object.fromEntries(shares.map(([pair, share]) => [pair, share * most])) };
  }
  return done;
}

/** Scored by agreement beyond guessing. How far below guessing the others can come hangs on how well guessing does. */
const BOUNDED: ReadonlySet<string> = new Set(['sort', 'compare', 'order']);

/**
 * Holds saved answers against what was done: every activity of the plan is there once, with what was pressed and nothing
 * else (the schemas of plays know no name, and refuse what they do not know), and no score is over 1; a score by agreement is not
 * under −1 either.
 */
export function expectAsDone(plan: Plan, saved: readonly Done[], done: readonly Done[]): void {
  const byId = new Map(plan.activities.map((activity) => [activity.id, activity]));
  expect(done.map(({ activity }) => activity)).toEqual([...byId.keys()]);
  const inOrder = (all: readonly Done[]): readonly Done[] =>
    all.toSorted((a, b) => (a.activity < b.activity ? -1 : 1));
  expect(inOrder(saved)).toEqual(inOrder(done.map((each) => asPlay(byId.get(each.activity), each))));
  for (const play of saved) {
    const activity = byId.get(play.activity);
    if (activity === undefined) throw new Error(`${play.activity}: not in the plan`);
    const read = playSchemas[activity.kind].parse(play);
    if (!isScored(activity)) continue;
    // The play passed the schema of this activity's own kind.
    const { score: value } = score(activity, read as PlayOf<typeof activity.kind>);
    expect(value, play.activity).not.toBeNull();
    expect(value, play.activity).toBeLessThanOrEqual(1);
    expect(value, play.activity).toBeGreaterThanOrEqual(BOUNDED.has(activity.kind) ? -1 : -Infinity);
  }
}
