import { shownFinds } from '../activities/index.ts';
import type { Plan } from '../compile/index.ts';
import type { FindToDraw, PitToCut } from '../drawing/index.ts';

/** The pits that activities of a lesson show whole, each once, with the finds shown in it. */
export function pitsShown(
  plan: Plan,
): readonly { readonly pit: PitToCut; readonly finds: readonly FindToDraw[] }[] {
  const pits = new Map<string, { pit: PitToCut; finds: readonly FindToDraw[] }>();
  for (const activity of plan.activities) {
    if (!('pit' in activity) || activity.pit === null || pits.has(activity.pit.id)) continue;
    pits.set(activity.pit.id, { pit: activity.pit, finds: shownFinds(activity) });
  }
  return [...pits.values()];
}
