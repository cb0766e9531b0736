import {
  derive,
  pick,
  shuffle,
  stream,
  uniform,
  uniformBelow,
  type Stream,
} from '../../../shared/chance/index.ts';
import type { Find } from '../../../shared/library/index.ts';
import { demoLibrary } from '../../demo.ts';

/** What was done to one cell of a made list, and what reading it must come to. */
export interface Mess {
  /** As the spreadsheet numbers it. */
  readonly row: number;
  readonly field: string;
  readonly written: string;
}

/** A made list: its text, what each clean row truly is, and what was done to the others. */
export interface MessyList {
  readonly seed: string;
  readonly text: string;
  readonly dataRows: number;
  /** By row of the spreadsheet: the find, where nothing was done to it. */
  readonly clean: ReadonlyMap<number, Find>;
  readonly mess: readonly Mess[];
  /** Rows that are no finds. */
  readonly junk: ReadonlySet<number>;
}

type Language = 'en' | 'de' | 'fr' | 'nl' | 'es' | 'own';

/** Column names written by hand here, not read from the words under test. */
const HEADERS: Readonly<Record<Language, readonly string[]>> = {
  en: [
    'SF No',
    'Pit',
    'Context',
    'Object',
    'Material',
    'Qty',
    'Wt (g)',
    'L (mm)',
    'W (mm)',
    'Th (mm)',
    'Condition',
    'Period',
    'Notes',
  ],
  de: [
    'Fundnr.',
    'Grube',
    'Befund',
    'Objekt',
    'Material',
    'Anzahl',
    'Gewicht (g)',
    'Länge (mm)',
    'Breite (mm)',
    'Dicke (mm)',
    'Zustand',
    'Datierung',
    'Bemerkungen',
  ],
  fr: [
    'N° objet',
    'Fosse',
    'US',
    'Désignation',
    'Matière',
    'Nombre',
    'Poids (g)',
    'Longueur (mm)',
    'Largeur (mm)',
    'Épaisseur (mm)',
    'État',
    'Datation',
    'Remarques',
  ],
  nl: [
    'Vondstnummer',
    'Kuil',
    'Spoor',
    'Voorwerp',
    'Materiaal',
    'Aantal',
    'Gewicht (g)',
    'Lengte (mm)',
    'Breedte (mm)',
    'Dikte (mm)',
    'Toestand',
    'Datering',
    'Opmerkingen',
  ],
  es: [
    'Nº hallazgo',
    'Fosa',
    'UE',
    'Objeto',
    'Materia prima',
    'Cantidad',
    'Peso (g)',
    'Longitud (mm)',
    'Anchura (mm)',
    'Grosor (mm)',
    'Estado',
    'Cronología',
    'Observaciones',
  ],
  own: [
    'small find',
    'pit',
    'context',
    'object type',
    'material',
    'count',
    'mass g',
    'length mm',
    'width mm',
    'thickness mm',
    'state',
    'age',
    'note',
  ],
};
const FIELDS = [
  'small-find',
  'pit',
  'context',
  'object-type',
  'material',
  'count',
  'mass-g',
  'length-mm',
  'width-mm',
  'thickness-mm',
  'state',
  'age',
  'note',
] as const;
type Column = (typeof FIELDS)[number];

const models = demoLibrary.sites.flatMap(({ pits }) => pits).flatMap(({ finds }) => finds);

/** Breakages: what is done to a cell. Each must be asked about at that row and field. */
const BREAKAGES: readonly {
  readonly field: Column;
  readonly write: (chance: Stream, before: string) => string;
}[] = [
  { field: 'length-mm', write: (_, before) => `${(Number(before) / 10).toFixed(1)} cm` },
  { field: 'length-mm', write: () => '-' },
  { field: 'width-mm', write: (_, before) => `c. ${before}` },
  { field: 'width-mm', write: () => '=C4' },
  { field: 'thickness-mm', write: () => '' },
  { field: 'thickness-mm', write: (_, before) => `${before}-${Number(before) + 4}` },
  { field: 'mass-g', write: (_, before) => `${(Number(before) / 1000).toPrecision(3)}kg` },
  { field: 'mass-g', write: () => '0.0' },
  { field: 'mass-g', write: () => '#REF!' },
  { field: 'mass-g', write: () => 'light' },
  { field: 'object-type', write: () => '?' },
  { field: 'object-type', write: () => 'Rubber' },
  { field: 'object-type', write: () => 'Zzyzx' },
  { field: 'age', write: () => 'Qwxyz' },
  { field: 'material', write: () => 'unobtainium' },
  { field: 'context', write: () => '' },
  { field: 'context', write: () => '=A1' },
  { field: 'note', write: () => 'found by J. Nobody' },
  { field: 'note', write: () => '=SUM(A1:A9)' },
];

const NOTES = [
  '',
  '',
  '',
  'two flake scars',
  'semi; colon, comma',
  'a "quoted" word',
  'line\nend',
  'tab free',
  'patina: white',
];

/** A list of finds made from the demo's own, in one of many shapes, with breakages put in on purpose. */
export function messyList(seed: string): MessyList {
  const chance = stream(`messy-list/${seed}`);
  const language = pick<Language>(chance, ['en', 'de', 'fr', 'nl', 'es', 'own']);
  const delimiter = pick(chance, [',', ';', '\t']);
  const newline = pick(chance, ['\n', '\r\n']);
  const usesComma = delimiter !== ',' && pick(chance, [true, false]);
  // A few lists are as long as a whole season's.
  const drawn = pick(chance, [3, 5, 12, 40, 120, 300]);
  const count = /^\d*00$|^0$/.test(seed) ? 3000 : drawn;
  const dirt = pick(chance, [0, 0.1, 0.3]);
  const order = shuffle(
    derive(chance, 'columns'),
    FIELDS.map((_, index) => index),
  );
  const quote = (text: string): string =>
    text.includes(delimiter) || /["\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
  const line = (cells: readonly string[]): string =>
    order.map((index) => quote(cells[index] ?? '')).join(delimiter);
  const decimal = (value: number | undefined): string =>
    value === undefined ? '' : usesComma ? String(value).replace('.', ',') : String(value);

  const lines = [line(HEADERS[language])];
  const clean = new Map<number, Find>();
  const mess: Mess[] = [];
  const junk = new Set<number>();
  for (let index = 0; index < count; index += 1) {
    if (uniform(chance) < dirt / 4) {
      const kind = uniformBelow(chance, 3);
      junk.add(lines.length + 1);
      lines.push(
        kind === 0 ? '' : kind === 1 ? line(HEADERS[language]) : order.map(() => '').join(delimiter),
      );
    }
    const model = pick(chance, models);
    const { note: _, ...bare } = model;
    const note = pick(chance, NOTES);
    const pit = 1 + (index % 7);
    const smallFind = 1000 + index;
    const find: Find = {
      ...bare,
      id: `P${pit}-${smallFind}`,
      pit: `P${pit}`,
      smallFind,
      context: pit * 100 + 1 + uniformBelow(chance, 3),
      status: 'ASM',
      ...(note === '' ? {} : { note }),
    };
    const cells: Record<Column, string> = {
      'small-find': String(smallFind),
      pit: pick(chance, [`P${pit}`, `Pit ${pit}`, String(pit)]),
      context: pick(chance, [String(find.context), `(${find.context})`]),
      'object-type': find.attributes['object-type'],
      material: find.attributes.material,
      count: String(find.count),
      'mass-g': decimal(find.massG),
      'length-mm': decimal(find.lengthMm),
      'width-mm': decimal(find.widthMm),
      'thickness-mm': decimal(find.thicknessMm),
      state: find.attributes.state,
      age: find.attributes.age,
      note,
    };
    const row = lines.length + 1;
    if (uniform(chance) < dirt) {
      const { field, write } = pick(chance, BREAKAGES);
      const written = write(chance, cells[field].replace(',', '.'));
      cells[field] = written;
      mess.push({ row, field, written });
    } else clean.set(row, find);
    lines.push(line(FIELDS.map((field) => cells[field])));
  }
  const mark = pick(chance, ['', '\uFEFF']);
  return {
    seed,
    text: `${mark}${lines.join(newline)}${pick(chance, ['', newline])}`,
    dataRows: lines.length - 1,
    clean,
    mess,
    junk,
  };
}
