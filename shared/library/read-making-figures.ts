import {
  type Experiment,
  type Figure,
  type Limits,
  type MakingFigures,
  type MakingRequest,
  type Measure,
  MEASURES,
} from '../making/index.ts';
import { checkMakingFigures } from './check-making-figures.ts';
import type { MakingEvidence } from './making-evidence.ts';
import { makingFiguresSchema, MEASURE_KEYS, type MakingFiguresFile } from './making-figures-schema.ts';
import { readYamlFile, type ReadFile } from './read-yaml-file.ts';

type Row = MakingFiguresFile['stones'][number] | MakingFiguresFile['woods'][number];
type Bare = MakingFiguresFile['woods'][number]['fell-factor'];

/** A number in a table's row as a figure of its own, so that it can be shown and pointed to. */
const figureOf = (row: Pick<Row, 'id' | 'label'>, of: string, bare: Bare): Figure => ({
  id: `${row.id}/${of}`,
  label: `${row.label}: ${of.replaceAll('-', ' ')}`,
  ...bare,
});

const base = (row: Pick<Row, 'id' | 'label'> & { readonly note?: string }) => ({
  id: row.id,
  label: row.label,
  ...(row.note === undefined ? {} : { note: row.note }),
});

function tablesOf(file: MakingFiguresFile): MakingFigures['tables'] {
  return {
    form: file.forms.map((row) => ({
      ...base(row),
      section: row.section,
      typicalMm: row['typical-mm'],
      shapeFactor: figureOf(row, 'share of its box filled', row['shape-factor']),
      knapFactor: figureOf(row, 'knapping time against the small plain form', row['knap-factor']),
    })),
    stone: file.stones.map((row) => ({
      ...base(row),
      shapedBy: row['shaped-by'],
      density: figureOf(row, 'density', row.density),
      grindFactor: figureOf(row, 'speed of grinding against flint', row['grind-factor']),
    })),
    grinder: file.grinders.map((row) => ({
      ...base(row),
      people: row.people,
      grindFactor: figureOf(row, 'speed against hand grinding on wet sandstone', row['grind-factor']),
    })),
    preform: file.preforms.map((row) => ({
      ...base(row),
      depthMm: figureOf(row, 'depth to grind off', row['depth-mm']),
    })),
    extent: file.extents.map((row) => ({
      ...base(row),
      share: figureOf(row, 'share of the surface ground', row.share),
    })),
    finish: file.finishes.map((row) => ({
      ...base(row),
      hoursPer100Cm2: figureOf(row, 'finishing by surface', row['hours-per-100-cm2']),
    })),
    skill: file.skills.map((row) => ({
      ...base(row),
      knapMultiplier: figureOf(row, 'knapping time against the experienced', row['knap-multiplier']),
      blankSuccess: figureOf(row, 'share of blanks that do not break', row['blank-success']),
      fellMultiplier: figureOf(row, 'felling time against the experienced', row['fell-multiplier']),
    })),
    wood: file.woods.map((row) => ({
      ...base(row),
      fellFactor: figureOf(row, 'felling time against middling wood', row['fell-factor']),
    })),
    axe: file.axes.map((row) => ({
      ...base(row),
      fellMultiplier: figureOf(row, 'felling time against a plain haft', row['fell-multiplier']),
    })),
  };
}

const byId = (rows: readonly Figure[]): unknown => Object.fromEntries(rows.map((row) => [row.id, row]));

function limitsOf(file: MakingFiguresFile): { readonly [Name in Measure]: Limits } {
  const limit = (key: string): Limits => {
    const row = file.limits.find(({ id }) => id === key);
    if (row === undefined) throw new RangeError(`no limits for ${key}`);
    return { from: row.from, to: row.to, unit: row.unit };
  };
  // One entry for each measure, in the order both lists share.
  return Object.fromEntries(MEASURES.map((name, index) => [name, limit(MEASURE_KEYS[index] ?? name)])) as {
    readonly [Name in Measure]: Limits;
  };
}

const camel = (key: string): string => key.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());

/** Inputs with the file's keys as the model's. */
const requestOf = (inputs: NonNullable<MakingFiguresFile['experiments'][number]['inputs']>): MakingRequest =>
  // The schema allows only the model's inputs, written with hyphens.
  Object.fromEntries(Object.entries(inputs).map(([key, value]) => [camel(key), value])) as MakingRequest;

function evidenceOf(file: MakingFiguresFile): MakingEvidence {
  return {
    figures: {
      // The check has made sure that every id is there.
      coefficients: byId(file.coefficients) as MakingFigures['coefficients'],
      spreads: byId(file.spreads) as MakingFigures['spreads'],
      limits: limitsOf(file),
      defaults: file.defaults,
      tables: tablesOf(file),
    },
    experiments: file.experiments.map((row): Experiment => ({
      ...row,
      inputs: row.inputs === null ? null : requestOf(row.inputs),
    })),
    specimens: file.specimens.map(
      ({
        'length-mm': lengthMm,
        'width-mm': widthMm,
        'thickness-mm': thicknessMm,
        'mass-g': massG,
        ...row
      }) => ({
        ...row,
        lengthMm,
        widthMm,
        thicknessMm,
        massG,
      }),
    ),
    otherFigures: file['other-figures'].map(({ 'log-spread': logSpread, ...row }) => ({
      ...row,
      ...(logSpread === undefined ? {} : { logSpread }),
    })),
    facts: file.facts,
    unknowns: file.unknowns,
    surprises: file.surprises,
    sources: file.sources,
  };
}

/**
 * Reads the figures of the making model, with all that stands behind them. Any fault leaves the whole file out: a
 * model with a figure missing would be worse than none.
 *
 * @example readMakingFigures('making-hours.yaml', text).value?.figures
 */
export function readMakingFigures(file: string, text: string): ReadFile<MakingEvidence> {
  const read = readYamlFile(file, text, makingFiguresSchema);
  if (read.value === null) return { ...read, value: null };
  const faults = checkMakingFigures(read.value);
  if (faults.length > 0) return { ...read, value: null, problems: [...read.problems, ...read.place(faults)] };
  return { ...read, value: evidenceOf(read.value) };
}
