import type { Fault } from '../../lesson/problem.ts';
import {
  nearestAllowed,
  plainSituation,
  safetyReport,
  type SafetyRules,
  type Setting,
} from '../../safety/index.ts';
import { handleProblems } from '../../words/en/handle-problems.ts';
import type { HandlePiece } from './activity.ts';
import type { HandleBlock } from './schema.ts';
import type { StationUse } from '../../safety/index.ts';

/**
 * What the safety rules refuse of a table of pieces, each an error at its piece with a mend; what they hold, a caution.
 *
 * @param pieces As the block lists them.
 * @param youngest Whole years of the youngest child of the lesson's bands.
 */
export function tableFaults(
  rules: SafetyRules,
  block: HandleBlock,
  pieces: readonly Pick<HandlePiece, 'is' | 'edge' | 'exposure'>[],
  table: StationUse,
  setting: Setting,
  youngest: number,
): readonly Fault[] {
  // One table a piece, so that each piece is told, and not only the first.
  const stations = pieces.map(({ edge, exposure }) => ({ ...table, pieces: [{ edge, exposure }] }));
  const { refusals } = safetyReport(rules, { ...plainSituation(0, youngest, [], setting), stations });
  const told = new Set<string>();
  return refusals.flatMap(({ id, outcome, station, say, mend }): readonly Fault[] => {
    const piece = pieces[station];
    if (piece !== undefined && id === 'X05') {
      const { is, edge, exposure } = piece;
      if (is === 'blunt-replica') {
        const path = ['pieces', station, 'edge'];
        const words = handleProblems.notBlunt(edge, youngest);
        return [{ code: 'handling-refused', grade: 'error', path, ...words, replacement: 'E0' }];
      }
      const nearer = nearestAllowed(rules.minimumAges, edge, youngest);
      return [
        {
          code: 'handling-refused',
          grade: 'error',
          path: ['pieces', station, 'is'],
          ...handleProblems.tooSharp(id, say, `${is}, ${exposure}`, edge, youngest, nearer),
          replacement: 'blunt-replica',
        },
      ];
    }
    if (told.has(id)) return [];
    told.add(id);
    const isOfChildren = id === 'X19';
    const received = isOfChildren ? `children: ${table.childrenAtOnce}` : `${table.kind}, ${setting}`;
    const words = handleProblems.refused(id, say, received, mend);
    const path = [isOfChildren && block.children !== undefined ? 'children' : 'pieces'];
    return outcome === 'refuse'
      ? [{ code: 'handling-refused', grade: 'error', path, ...words }]
      : [{ code: 'visit-held', grade: 'caution', path, ...words }];
  });
}
