import type { HandleActivity, PieceIs } from '../../shared/activities/scorers.ts';
import type { handle } from '../../shared/words/en/handle.ts';
import type { Template } from '../../shared/words/index.ts';

/** The words of a handling session, resolved for a band. */
export type HandleWords = Readonly<Record<keyof typeof handle, Template>>;

export interface HandleProps {
  readonly lesson: string;
  readonly activity: HandleActivity;
  readonly words: HandleWords;
  /** What shows of each piece, for those who hear the drawing. */
  readonly seen: Readonly<Record<string, string>>;
}

/** What lies on the tray, in words. */
export const isWords = (words: HandleWords): Readonly<Record<PieceIs, Template>> => ({
  original: words.original,
  replica: words.replica,
  'blunt-replica': words.bluntReplica,
});
