import type { FindToDraw } from '../drawing/index.ts';
import type { Find } from './library.ts';

/** What a drawing needs to know of a find. */
export const drawable = (find: Find): FindToDraw => ({
  id: find.id,
  objectType: find.attributes['object-type'],
  material: find.attributes.material,
  state: find.attributes.state,
  lengthMm: find.lengthMm,
  widthMm: find.widthMm,
  thicknessMm: find.thicknessMm,
  count: find.count,
  ...(find.side === undefined ? {} : { side: find.side }),
  ...(find.decoration === undefined ? {} : { decoration: find.decoration }),
  ...(find.photo === undefined ? {} : { photo: find.photo }),
});
