import { derive, pick } from '../chance/index.ts';
import { reckonQuantity } from '../making/index.ts';
import { draftingWords as words } from '../words/en/drafting.ts';
import { axesOf } from './axes.ts';
import { meritOf, type DraftContext, type Drafted, type MeritPart } from './draft.ts';

/** A broken axe is taken to have been half as long again: ASM, to be corrected by whoever holds it. */
const WHOLE_OVER_BROKEN = 1.5;
const OF = 'axe-hours';

/** The hours in an axe of the site, where the making model knows its stone and size. */
export function* draftEstimate(context: DraftContext): Generator<void, Drafted, void> {
  yield;
  const making = context.library.making;
  const minutes = Math.min(15, context.limits.minutesPerActivity);
  if (minutes > context.minutesMost)
    return { candidates: [], lacking: [words.lackTime(context.minutesMost, minutes)] };
  const stones = making?.figures.tables.stone.map(({ id }) => id) ?? [];
  const fit = axesOf(context, ['polished-axe']).flatMap((find) => {
    const isWhole = find.attributes.state !== 'broken';
    const lengthMm = isWhole ? find.lengthMm : Math.round((find.lengthMm * WHOLE_OVER_BROKEN) / 10) * 10;
    const { widthMm, thicknessMm } = find;
    const stone = find.attributes.material;
    if (making === null || !stones.includes(stone)) return [];
    const reckoned = reckonQuantity(making.figures, OF, { lengthMm, widthMm, thicknessMm, stone });
    return reckoned.ok ? [{ find, isWhole, lengthMm }] : [];
  });
  const [best] = fit;
  if (best === undefined) return { candidates: [], lacking: [words.lackAxeMeasured()] };
  const alike = fit.filter(
    ({ find, isWhole }) =>
      isWhole === best.isWhole && context.pins.has(find.id) === context.pins.has(best.find.id),
  );
  const { find, isWhole, lengthMm } = pick(derive(context.chance, 'hours'), alike);
  const name =
    context.library.vocabulary.objectTypes.find(({ id }) => id === find.attributes['object-type'])?.label ??
    '';
  const parts: readonly MeritPart[] = [
    { name: 'size', weight: 0.5, value: 1, told: words.size(lengthMm) },
    { name: 'whole', weight: 0.5, value: isWhole ? 1 : 0.6, told: words.whole(isWhole) },
  ];
  const lines = [
    `of: ${OF}`,
    isWhole
      ? `for: ${find.id}`
      : `for: { find: ${find.id}, length-mm: ${lengthMm} } # ${words.wholeLength(find.lengthMm)}`,
  ];
  return {
    candidates: [
      {
        place: 4,
        title: words.estimateTitle(),
        minutes,
        lines,
        // What may be changed afterwards brings larger numbers.
        plainer: [...lines, 'levers: []'],
        merit: meritOf(parts),
        parts,
        finds: [find.id],
        summary: words.estimateSummary(name, find.id),
      },
    ],
    lacking: [],
  };
}
