import type { EdgeClass, Hazard, SafetyRules, StationRule } from '../safety/index.ts';
import { EDGE_CLASSES } from '../safety/index.ts';
import { checkHazards } from './check-hazards.ts';
import { hazardsFile, type HazardsFile } from './hazards-schema.ts';
import { readYamlFile, type ReadFile } from './read-yaml-file.ts';

const minimumAges = (rows: HazardsFile['minimum-ages']): SafetyRules['minimumAges'] =>
  // One entry for each class; a class without a row is never met.
  Object.fromEntries(
    EDGE_CLASSES.map((edge) => {
      const row = rows.find((each) => each.edge === edge);
      return [
        edge,
        {
          look: row?.look ?? null,
          'touch-held': row?.['touch-held'] ?? null,
          handle: row?.handle ?? null,
          use: row?.use ?? null,
        },
      ];
    }),
  ) as SafetyRules['minimumAges'];

const edgeOfType = (rows: HazardsFile['edges-of-types']): Readonly<Record<string, EdgeClass>> =>
  Object.fromEntries(EDGE_CLASSES.flatMap((edge) => rows[edge].map((type) => [type, edge] as const)));

const stationFrom = (row: HazardsFile['stations'][number]): StationRule => ({
  id: row.id,
  name: row.name,
  practitioners: row.practitioners,
  minimumSupervisors: row['minimum-supervisors'],
  childrenPerSupervisor: row['children-per-supervisor'],
  maximumAtOnce: row['maximum-at-once'],
  settings: row.settings,
  ropeM: row['rope-m'],
  eyeZoneM: row['eye-zone-m'],
  kit: row.kit,
  ...known(row),
});

const hazardFrom = ({ arises, 'defer-to': deferTo, ...row }: HazardsFile['hazards'][number]): Hazard => ({
  ...row,
  numbers: row.numbers.map(numberFrom),
  controls: row.controls.map(({ id, level, text, ...mark }) => ({ id, level, text, ...known(mark) })),
  arises: {
    always: arises.always ?? false,
    kinds: arises.kinds ?? [],
    stations: arises.stations ?? [],
    settings: arises.settings ?? [],
    flags: arises.flags ?? [],
    edges: arises.edges ?? [],
  },
  deferTo,
});

/** A row's mark and source; a note where it has one. */
function known({ status, source, note }: { status: string; source: string; note?: string | undefined }) {
  return { status, source, ...(note === undefined ? {} : { note }) };
}

function numberFrom(
  row: HazardsFile['protective-numbers'][number],
): SafetyRules['protectiveNumbers'][number] {
  const { name, value, unit, working } = row;
  return {
    name,
    value,
    unit,
    ...(row.with === undefined ? {} : { with: row.with }),
    ...(working === undefined ? {} : { working }),
    ...known(row),
  };
}

const textFrom = (row: HazardsFile['history'][number]): SafetyRules['history'][number] => ({
  text: row.text,
  ...known(row),
});

const signFrom = (row: HazardsFile['signs'][number]): SafetyRules['signs'][number] => ({
  id: row.id,
  title: row.title,
  useFor: row['use-for'],
  ...known(row),
});

const rulesFrom = (file: HazardsFile): SafetyRules => ({
  caution: {
    short: file.caution.short,
    full: file.caution.full,
    forPupils: file.caution['for-pupils'],
    neverLine: file.caution['never-line'],
    status: file.caution.status,
  },
  edges: file['edge-classes'].map((row) => ({
    id: row.id,
    name: row.name,
    meaning: row.meaning,
    ...known(row),
  })),
  edgeCheck: textFrom(file['edge-check']),
  exposures: file.exposures.map((row) => ({ id: row.id, meaning: row.meaning, ...known(row) })),
  minimumAges: minimumAges(file['minimum-ages']),
  edgeOfType: edgeOfType(file['edges-of-types']),
  ratios: file.ratios.map((row) => ({
    id: row.id,
    framework: row.framework,
    ageFrom: row['age-from'],
    ageTo: row['age-to'],
    childrenPerAdult: row['children-per-adult'],
    published: row.published,
    standing: row.standing,
    ...known(row),
  })),
  ratioNotes: file['ratio-notes'].map(textFrom),
  stations: file.stations.map(stationFrom),
  clauses: file.clauses.map((row) => ({ id: row.id, ...textFrom(row) })),
  firstAidNumbers: file['first-aid-numbers'].map(numberFrom),
  refusals: file.refusals.map(({ id, outcome, when, say, mend, ...mark }) => ({
    id,
    outcome,
    when,
    say,
    mend,
    ...known(mark),
  })),
  protectiveEquipment: file['protective-equipment'].map(({ id, item, marks, ...mark }) => ({
    id,
    item,
    marks,
    ...known(mark),
  })),
  protectiveNumbers: file['protective-numbers'].map(numberFrom),
  signs: file.signs.map(signFrom),
  bottleLabels: file['bottle-labels'].map(signFrom),
  kit: file.kit.map((row) => ({ id: row.id, for: row.for, items: row.items, ...known(row) })),
  hazards: file.hazards.map(hazardFrom),
  history: file.history.map(textFrom),
  assessment: {
    steps: file.assessment.steps.map((row) => ({ ...textFrom(row), filledBy: row['filled-by'] })),
    columns: file.assessment.columns.map(({ id, heading, fill, ...mark }) => ({
      id,
      heading,
      fill,
      ...known(mark),
    })),
    notes: file.assessment.notes.map(textFrom),
  },
  sources: file.sources.map(({ id, citation, status, via }) => ({
    id,
    citation,
    status,
    ...(via === undefined ? {} : { via }),
  })),
});

/**
 * Reads the hazards, ratios, stations and refusals. Any fault leaves the whole file out: safety rules with a row missing
 * would be worse than none.
 *
 * @example readHazards('visits.yaml', text).value?.refusals.length // 22
 */
export function readHazards(file: string, text: string): ReadFile<SafetyRules> {
  const read = readYamlFile(file, text, hazardsFile);
  if (read.value === null) return { ...read, value: null };
  const faults = checkHazards(read.value);
  if (faults.length > 0) return { ...read, value: null, problems: [...read.problems, ...read.place(faults)] };
  return { ...read, value: rulesFrom(read.value) };
}
