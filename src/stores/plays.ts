import { map } from 'nanostores';

/** A play of an activity, as its scorer takes it. */
interface AnyPlay {
  readonly activity: string;
}

/** What has been played on this page, by activity: the play whose record was read last. Nobody's name is in it. */
export const $plays = map<Record<string, AnyPlay>>({});

/** Notes a play whose record is read, and gives it back to be scored. */
export function noted<Play extends AnyPlay>(play: Play): Play {
  const isKnown = JSON.stringify($plays.get()[play.activity]) === JSON.stringify(play);
  // A screen is being drawn: what listens is told when it has been.
  if (!isKnown) queueMicrotask(() => $plays.setKey(play.activity, play));
  return play;
}
