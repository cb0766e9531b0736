import type { FindToDraw } from '../../shared/drawing/index.ts';
import { drawnFind, viewBoxOf, type Cut } from '../components/drawn.ts';
import type { Picture } from '../player/lesson-view.ts';

/** A find as a picture of its own. */
export function picture(find: FindToDraw, cut: Cut): Picture {
  const drawn = drawnFind(find, cut);
  return { viewBox: viewBoxOf(drawn), markup: drawn.markup };
}
