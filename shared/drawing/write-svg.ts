import { describeFind } from './describe-find.ts';
import { drawFind, type DrawFindOptions } from './draw-find.ts';
import type { FindToDraw } from './drawing.ts';

const asText = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

/**
 * A find's drawing as a whole SVG document, to scale, with its description.
 *
 * @param mmPerPx How many millimetres of the find one pixel stands for: 0.25 draws 100 mm as 400 px.
 * @throws RangeError unless `mmPerPx` is above 0.
 */
export function writeSvg(find: FindToDraw, options: DrawFindOptions, mmPerPx: number): string {
  if (!(mmPerPx > 0)) throw new RangeError(`mmPerPx must be above 0, received ${mmPerPx}`);
  const { markup, viewBox } = drawFind(find, options);
  const { short, long } = describeFind(find);
  const px = (mm: number): number => Math.round((mm / mmPerPx) * 100) / 100;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" role="img" width="${px(viewBox.width)}" height="${px(viewBox.height)}"`,
    ` viewBox="${viewBox.x} ${viewBox.y} ${viewBox.width} ${viewBox.height}">`,
    `<title>${asText(short)}</title><desc>${asText(long)}</desc>${markup}</svg>\n`,
  ].join('');
}
