import { nearest, type Fault, type WrittenStation, type WrittenVisit } from '../lesson/index.ts';
import type { Library, Site } from '../library/library.ts';
import { stationRule, type StationUse } from '../safety/index.ts';
import { visitProblems } from '../words/en/visit-problems.ts';
import type { PlanVisit } from './plan.ts';

export interface ReadVisit {
  readonly visit: PlanVisit;
  /** Finds nobody knows; they count as the sharpest. */
  readonly faults: readonly Fault[];
}

/** Each name a station's finds may have, with its type of object: finds of the site by id, and the types themselves. */
function typesByName(site: Site, library: Library): ReadonlyMap<string, string> {
  const types = [
    ...library.vocabulary.objectTypes.map(({ id }) => id),
    ...Object.keys(library.safety.edgeOfType),
  ];
  const finds = site.pits.flatMap((pit) => pit.finds);
  return new Map([
    ...types.map((type) => [type, type] as const),
    ...finds.map(({ id, attributes }) => [id, attributes['object-type']] as const),
  ]);
}

/** A key where something was written for it, nothing where it was not. */
const ifWritten = <Key extends keyof StationUse>(
  key: Key,
  value: StationUse[Key] | undefined,
): Partial<StationUse> => (value === undefined ? {} : { [key]: value });

/** A station as the safety rules read it. @param types Types of object, where finds were written. */
export const stationUse = (
  written: WrittenStation,
  types: readonly string[] | undefined,
  maximumAtOnce: number,
): StationUse => {
  const { pupils = [] } = written;
  return {
    kind: written.kind,
    childrenAtOnce: written.children ?? maximumAtOnce,
    ...ifWritten('edgeClass', written.edge),
    ...ifWritten('exposure', written.exposure),
    ...ifWritten('finds', types),
    ...ifWritten('spectatorsAtMetres', written['spectators-at-metres']),
    ...ifWritten('metresToUnbarrieredEdge', written['open-edge-at-metres']),
    ...ifWritten('plantWorkingOnRoute', written['plant-working']),
    ...ifWritten('dry', written.dry),
    ...ifWritten('poweredTool', written['powered-tool']),
    ...ifWritten('rawMaterials', written['raw-materials']),
    ...(pupils.includes('flake') ? { pupilsFlake: true } : {}),
    ...(pupils.includes('swing') ? { pupilsSwing: true } : {}),
    ...(pupils.includes('grind') ? { pupilsGrind: true } : {}),
    ...(pupils.includes('heat') ? { pupilsHeat: true } : {}),
    ...(pupils.includes('throw') ? { pupilsThrow: true } : {}),
  };
};

/** What a head states of a visit, as the safety rules read it: finds by their types, children as many as fit. */
export function readVisit({ setting, stations }: WrittenVisit, site: Site, library: Library): ReadVisit {
  const types = typesByName(site, library);
  const known = [...types.keys()];
  const faults = stations.flatMap(({ finds = [] }, index) =>
    finds.flatMap((name, at): readonly Fault[] => {
      if (types.has(name)) return [];
      const near = nearest(name, known);
      return [
        {
          code: 'find-unknown',
          grade: 'error',
          path: ['visit', 'stations', index, 'finds', at],
          ...visitProblems.findUnknown(name, near, site.name),
          ...(near === null ? {} : { replacement: near }),
        },
      ];
    }),
  );
  const uses = stations.map((written) =>
    stationUse(
      written,
      written.finds?.map((name) => types.get(name) ?? name),
      stationRule(library.safety, written.kind).maximumAtOnce,
    ),
  );
  return { visit: { setting, stations: uses }, faults };
}
