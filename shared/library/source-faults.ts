import { nearest } from '../lesson/nearest.ts';
import type { Fault, Path } from '../lesson/problem.ts';
import { shapeWords } from '../words/en/problems.ts';

/** Sources named that are not in the list of sources, each at its place with the nearest known. */
export const sourceFaults = (
  named: readonly { readonly path: Path; readonly source: string }[],
  known: readonly string[],
): readonly Fault[] =>
  named.flatMap(({ path, source }): readonly Fault[] => {
    if (known.includes(source)) return [];
    const near = nearest(source, known);
    return [
      {
        code: 'source-unknown',
        grade: 'error',
        path,
        ...shapeWords.unknownWord(source, near, known, 'in content/sources.yaml'),
        ...(near === null ? {} : { replacement: near }),
      },
    ];
  });
