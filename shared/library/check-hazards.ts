import { REFUSAL_IDS, STATION_KINDS } from '../safety/index.ts';
import { nearest } from '../lesson/nearest.ts';
import type { Fault, Path } from '../lesson/problem.ts';
import { safetyProblems } from '../words/en/safety-problems.ts';
import type { HazardsFile } from './hazards-schema.ts';

interface Row {
  readonly path: Path;
  readonly id: string;
}

const rowsOf = (list: string, rows: readonly { readonly id: string }[]): readonly Row[] =>
  rows.map(({ id }, index) => ({ path: [list, index, 'id'], id }));

/** Each id once in its list; controls once in the whole file. */
function repeated(file: HazardsFile): readonly Fault[] {
  const controls = file.hazards.flatMap((hazard, index) =>
    hazard.controls.map(({ id }, place): Row => ({ path: ['hazards', index, 'controls', place, 'id'], id })),
  );
  const lists = [
    rowsOf('ratios', file.ratios),
    rowsOf('stations', file.stations),
    rowsOf('refusals', file.refusals),
    rowsOf('signs', file.signs),
    rowsOf('kit', file.kit),
    rowsOf('hazards', file.hazards),
    rowsOf('sources', file.sources),
    controls,
  ];
  return lists.flatMap((rows) => {
    const seen = new Set<string>();
    return rows.flatMap(({ id, path }): readonly Fault[] => {
      if (!seen.has(id)) {
        seen.add(id);
        return [];
      }
      return [{ code: 'id-repeated', grade: 'error', path, ...safetyProblems.idTwice(id) }];
    });
  });
}

/** Every row's source is in the list at the end of the file. */
function sourceless(file: HazardsFile): readonly Fault[] {
  const known = file.sources.map(({ id }) => id);
  const faults: Fault[] = [];
  const walk = (value: unknown, path: Path): void => {
    if (Array.isArray(value)) value.forEach((item, index) => walk(item, [...path, index]));
    else if (typeof value === 'object' && value !== null) {
      for (const [key, inner] of Object.entries(value)) {
        if (key === 'source' && typeof inner === 'string' && !known.includes(inner)) {
          const near = nearest(inner, known);
          faults.push({
            code: 'source-unknown',
            grade: 'error',
            path: [...path, key],
            ...safetyProblems.sourceUnknown(inner, near),
            ...(near === null ? {} : { replacement: near }),
          });
        } else walk(inner, [...path, key]);
      }
    }
  };
  walk(file, []);
  return faults;
}

/** What a row points to is there: signs and kit lists. */
function dangling(file: HazardsFile): readonly Fault[] {
  const point = (written: string, known: readonly string[], path: Path): readonly Fault[] => {
    if (known.includes(written)) return [];
    const near = nearest(written, known);
    const fault: Fault = {
      code: 'word-unknown',
      grade: 'error',
      path,
      ...safetyProblems.pointsNowhere(written, near, known),
      ...(near === null ? {} : { replacement: near }),
    };
    return [fault];
  };
  const signs = file.signs.map(({ id }) => id);
  const kit = file.kit.map(({ id }) => id);
  return [
    ...file.hazards.flatMap((hazard, index) =>
      hazard.signs.flatMap((sign, place) => point(sign, signs, ['hazards', index, 'signs', place])),
    ),
    ...file.stations.flatMap((station, index) =>
      station.kit.flatMap((list, place) => point(list, kit, ['stations', index, 'kit', place])),
    ),
  ];
}

/** Every station and every refusal the reckoning looks up has its row. */
function missing(file: HazardsFile): readonly Fault[] {
  const lack = (list: 'stations' | 'refusals', wanted: readonly string[]): readonly Fault[] => {
    const there = new Set<string>(file[list].map(({ id }) => id));
    return wanted
      .filter((id) => !there.has(id))
      .map((id): Fault => ({
        code: 'key-missing',
        grade: 'error',
        path: [list],
        ...safetyProblems.rowMissing(id, list),
      }));
  };
  return [...lack('stations', STATION_KINDS), ...lack('refusals', REFUSAL_IDS)];
}

/** All that a file of hazards must hold beyond its shape. */
export const checkHazards = (file: HazardsFile): readonly Fault[] => [
  ...repeated(file),
  ...sourceless(file),
  ...dangling(file),
  ...missing(file),
];
