import {
  QUANTITIES,
  reckonQuantity,
  type MakingFigures,
  type MakingRequest,
  type QuantityId,
} from '../../making/index.ts';
import type { Lever, LeverId } from './activity.ts';

type Option = Lever['options'][number];

/** Stones that show the differences: by their ids, those that the figures have. */
const STONES = ['flint', 'fine-tuff', 'dolerite', 'jadeitite'];
const WOODS = ['alder', 'mixed', 'ash', 'oak', 'yew'];
const GRINDERS = ['wet-sandstone', 'wet-sandstone-sand', 'quartzite-sledge', 'weighted-pull'];
const SIZES = [0.6, 0.8, 1, 1.3, 1.7, 2.2];
const DIAMETERS = [5, 10, 20, 30, 50];
const MOST = 4;

const sizeLabel = ({ lengthMm = 0, widthMm = 0, thicknessMm = 0 }: MakingRequest): string =>
  `${lengthMm} × ${widthMm} × ${thicknessMm} mm`;

/** The find's own size in proportion, smaller and larger, as far as the model goes. */
function sizeOptions(figures: MakingFigures, request: MakingRequest): readonly Option[] {
  const inputs = ['lengthMm', 'widthMm', 'thicknessMm'] as const;
  return SIZES.flatMap((factor): Option[] => {
    const change = Object.fromEntries(
      inputs.map((input) => [input, Math.round((request[input] ?? 0) * factor)]),
    );
    const fits = inputs.every((input) => {
      const value = change[input] ?? 0;
      return value >= figures.limits[input].from && value <= figures.limits[input].to;
    });
    return fits ? [{ id: String(factor), label: sizeLabel(change), change }] : [];
  });
}

function diameterOptions(request: MakingRequest): readonly Option[] {
  const own = request.diameterCm ?? 0;
  return [...new Set([...DIAMETERS, own])]
    .filter((diameterCm) => diameterCm > 0)
    .toSorted((a, b) => a - b)
    .map((diameterCm) => ({ id: String(diameterCm), label: `${diameterCm} cm`, change: { diameterCm } }));
}

/** Options from a table of the model: those wanted, or all, and always the record's own. */
function tableOptions(
  figures: MakingFigures,
  lever: Exclude<LeverId, 'size' | 'diameter'>,
  own: string,
  wanted: readonly string[] | null,
): readonly Option[] {
  const rows: readonly { readonly id: string; readonly label: string }[] = figures.tables[lever];
  return rows
    .filter(({ id }) => wanted === null || wanted.includes(id) || id === own)
    .map(({ id, label }) => ({ id, label, change: changeFor(figures, lever, id) }));
}

/** Another stone is shaped in its own way: what is pecked starts from a pecked blank. */
function changeFor(figures: MakingFigures, lever: LeverId, id: string): Option['change'] {
  if (lever !== 'stone') return { [lever]: id };
  const isPecked = figures.tables.stone.find((stone) => stone.id === id)?.shapedBy === 'pecking';
  return { stone: id, preform: isPecked ? 'pecked' : 'good' };
}

function optionsOf(figures: MakingFigures, lever: LeverId, request: MakingRequest): Omit<Lever, 'id'> {
  if (lever === 'size') {
    const options = sizeOptions(figures, request);
    return { options, at: options.findIndex(({ id }) => id === '1') };
  }
  if (lever === 'diameter') {
    const options = diameterOptions(request);
    return { options, at: options.findIndex(({ id }) => id === String(request.diameterCm)) };
  }
  const own = request[lever] ?? figures.defaults[lever];
  const wanted = { stone: STONES, wood: WOODS, grinder: GRINDERS }[lever as string] ?? null;
  const options = tableOptions(figures, lever, own, wanted).map((option) =>
    // The record's own stone keeps the blank the lead asked for.
    option.id === own && lever === 'stone'
      ? { ...option, change: { stone: own, preform: request.preform ?? figures.defaults.preform } }
      : option,
  );
  return { options, at: options.findIndex(({ id }) => id === own) };
}

/** The options the model answers for with more than nothing; none where they all give the same. */
function answering(
  figures: MakingFigures,
  quantity: QuantityId,
  request: MakingRequest,
  { id, options, at }: Lever,
): Lever {
  const middles = options.map(({ change }) => {
    const reckoned = reckonQuantity(figures, quantity, { ...request, ...change });
    return reckoned.ok ? reckoned.value.middle : 0;
  });
  const kept = options.filter((_, index) => (middles[index] ?? 0) > 0);
  const own = options[at];
  return new Set(middles.filter((middle) => middle > 0)).size > 1 && own !== undefined
    ? { id, options: kept, at: kept.indexOf(own) }
    : { id, options: [], at: -1 };
}

const HEAD: readonly LeverId[] = ['size', 'stone', 'grinder', 'skill'];
const TREE: readonly LeverId[] = ['diameter', 'wood', 'skill', 'axe'];

/** What may be changed after the record has been read: what the lead names, or what moves this quantity. */
export function pickLevers(
  figures: MakingFigures,
  quantity: QuantityId,
  request: MakingRequest,
  wanted: readonly LeverId[] | undefined,
): readonly Lever[] {
  const needs: readonly string[] = QUANTITIES[quantity].needs;
  const usual = [...(needs.includes('head') ? HEAD : []), ...(needs.includes('tree') ? TREE : [])];
  return [...new Set(wanted ?? usual)]
    .map((id) => answering(figures, quantity, request, { id, ...optionsOf(figures, id, request) }))
    .filter(({ options, at }) => options.length > 1 && at >= 0)
    .slice(0, MOST);
}
