import type { FindToDraw } from '../../shared/drawing/index.ts';
import { drawingId } from '../islands/drawing-id.ts';
import { drawnFind, viewBoxOf } from './drawn.ts';

/** A drawing kept once in a page, to be shown wherever its id is used. */
export interface Symbol {
  readonly id: string;
  readonly viewBox: string;
  readonly markup: string;
}

/** The face of a find, as small places show it. */
export function faceSymbol(find: FindToDraw): Symbol {
  const face = drawnFind(find, 'face');
  return { id: drawingId(find.id), viewBox: viewBoxOf(face), markup: face.markup };
}
