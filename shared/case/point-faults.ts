import type { Framework } from '../curriculum/index.ts';
import { nearest } from '../lesson/nearest.ts';
import type { Fault } from '../lesson/problem.ts';
import type { FrameworkWords } from '../library/read-framework.ts';
import { shapeWords } from '../words/en/problems.ts';
import { oursOf } from './item-stage.ts';
import type { ReadItem } from './package-schema.ts';

/** Kinds, conditions and sources that an outcome of ours points to and that are not there. */
export function pointFaults(
  item: ReadItem,
  index: number,
  known: FrameworkWords,
  sources: Framework['sources'],
): readonly Fault[] {
  const own = oursOf(item);
  if (own === null || !('outcome' in own)) return [];
  const base = ['CFItems', index, 'extensions', 'pitlore'];
  const points = [
    { written: own.source.ref, words: sources.map(({ id }) => id), path: [...base, 'source', 'ref'] },
    ...(own.evidence ?? []).flatMap(({ kind, when }, place) => [
      { written: kind, words: known.kinds, path: [...base, 'evidence', place, 'kind'] },
      { written: when, words: known.conditions, path: [...base, 'evidence', place, 'when'] },
    ]),
  ];
  return points
    .filter(({ written, words }) => !words.includes(written))
    .map(({ written, words, path }) => ({
      code: 'word-unknown',
      grade: 'error',
      path,
      ...shapeWords.unknownWord(written, nearest(written, words), words),
    }));
}
