import {
  QUANTITIES,
  type Choice,
  type Figure,
  type MakingFigures,
  type MakingRequest,
  type QuantityId,
} from '../../making/index.ts';
import type { EstimateActivity } from './activity.ts';

type Given = EstimateActivity['given'][number];

/** What the record was reckoned with, in the order of a label: size and stone first, then each choice a figure was used of. */
export function tellGiven(
  figures: MakingFigures,
  quantity: QuantityId,
  request: MakingRequest,
  used: readonly Figure[],
): readonly Given[] {
  const needs: readonly string[] = QUANTITIES[quantity].needs;
  const chosen = (id: Choice & Given['id']): readonly Given[] => {
    const rows: readonly { readonly id: string; readonly label: string }[] = figures.tables[id];
    const own = request[id] ?? figures.defaults[id];
    if (!used.some((figure) => figure.id.startsWith(`${own}/`))) return [];
    return [{ id, value: rows.find((row) => row.id === own)?.label ?? own }];
  };
  const { lengthMm, widthMm, thicknessMm, diameterCm, stakes, noduleKg } = request;
  const ofHead: readonly Given[] = [
    { id: 'size', value: `${lengthMm} × ${widthMm} × ${thicknessMm} mm` },
    ...chosen('stone'),
    ...chosen('extent'),
    ...chosen('grinder'),
    ...chosen('skill'),
  ];
  const ofTree: readonly Given[] = [
    ...(stakes === undefined ? [] : [{ id: 'stakes' as const, value: String(stakes) }]),
    { id: 'diameter', value: `${diameterCm} cm` },
    ...chosen('wood'),
    ...chosen('axe'),
    ...chosen('skill'),
  ];
  return [
    ...(needs.includes('noduleKg') ? [{ id: 'nodule' as const, value: `${noduleKg} kg` }] : []),
    ...(needs.includes('head') ? ofHead : []),
    ...(needs.includes('tree') ? ofTree : []),
  ];
}
