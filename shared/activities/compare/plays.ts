import { JUDGEMENTS } from '../../assemblage/index.ts';
import { pick, uniform, type Stream } from '../../chance/index.ts';
import type { CompareActivity } from './activity.ts';
import type { ComparePlay } from './play.ts';

/** The play that agrees with the record throughout. */
export function recordCompare({ id, places, chance }: CompareActivity): ComparePlay {
  if (places !== null) return { activity: id, places: { ...places.record } };
  const pairs = chance?.pairs ?? [];
  const judged = Object.fromEntries(pairs.map((pair) => [pair.id, pair.record]));
  const likeness = Object.fromEntries(pairs.map((pair) => [pair.id, pair.likeness]));
  return { activity: id, likeness, before: judged, after: judged };
}

/** A play by guessing: any of what is offered, each as likely. */
export function guessCompare({ id, places, chance }: CompareActivity, stream: Stream): ComparePlay {
  if (places !== null) {
    const kinds = Object.keys(places.record);
    return {
      activity: id,
      places: Object.fromEntries(kinds.map((kind) => [kind, pick(stream, places.offered)])),
    };
  }
  const pairs = chance?.pairs ?? [];
  const most = chance?.most ?? 1;
  const each = <Value>(guess: () => Value): Record<string, Value> =>
    Object.fromEntries(pairs.map((pair) => [pair.id, guess()]));
  return {
    activity: id,
    likeness: each(() => most * uniform(stream)),
    before: each(() => pick(stream, JUDGEMENTS)),
    after: each(() => pick(stream, JUDGEMENTS)),
  };
}
