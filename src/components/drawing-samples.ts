import { TYPES_DRAWN, type FindToDraw } from '../../shared/drawing/index.ts';
import { drawable, type Library } from '../../shared/library/index.ts';

/** For types that the site has no find of: an invented thing of a usual size. */
const invented = (objectType: string): FindToDraw => ({
  id: `sample-${objectType}`,
  objectType,
  material: 'flint',
  state: 'whole',
  lengthMm: 60,
  widthMm: 40,
  thicknessMm: 12,
  count: 1,
});

/** One find of every type that is drawn: the site's largest, or an invented one. */
export function drawingSamples(library: Library): readonly FindToDraw[] {
  const finds = library.sites.flatMap(({ pits }) => pits.flatMap((pit) => pit.finds.map(drawable)));
  return TYPES_DRAWN.map(
    (type) =>
      finds.filter(({ objectType }) => objectType === type).toSorted((a, b) => b.lengthMm - a.lengthMm)[0] ??
      invented(type),
  );
}
