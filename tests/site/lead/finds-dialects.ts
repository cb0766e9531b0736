import { derive, pick, stream, uniform } from '../../../shared/chance/index.ts';
import { THINGS, type InventedFind } from './invented-finds.ts';

/** A list made of invented finds, in the habits of one finds desk. */
export interface MadeList {
  readonly name: string;
  readonly text: string;
  /** Which find stands in which row, as the spreadsheet numbers it. */
  readonly rows: ReadonlyMap<number, InventedFind>;
  /** Rows that say again what a row before said. */
  readonly doubled: ReadonlySet<number>;
}

const GERMAN_AGES = { 'late-neolithic': 'Endneolithikum', modern: 'Neuzeit', natural: '' } as const;
const ENGLISH_AGES = { 'late-neolithic': 'Late Neolithic', modern: 'Modern', natural: 'Natural' } as const;

const comma = (value: number): string => String(value).replace('.', ',');

/** Semicolons between cells, commas in numbers, centimetres, and German names. */
export function germanList(finds: readonly InventedFind[]): MadeList {
  const header = [
    'Fundnr.',
    'Grube',
    'Befund',
    'Ansprache',
    'Rohstoff',
    'Länge (cm)',
    'Breite (cm)',
    'Dicke (cm)',
    'Gewicht (g)',
    'Zustand',
    'Datierung',
  ];
  const lines = finds.map(
    ({ number, pit, context, thing, lengthMm, widthMm, thicknessMm, massG, isBroken }) =>
      [
        number,
        `Grube ${pit}`,
        context,
        ...THINGS[thing].german,
        ...[lengthMm, widthMm, thicknessMm].map((mm) => comma(mm / 10)),
        comma(massG),
        isBroken ? 'Bruchstück' : 'vollständig',
        GERMAN_AGES[THINGS[thing].age],
      ].join(';'),
  );
  return {
    name: 'Fundliste.csv',
    text: [header.join(';'), ...lines, ''].join('\r\n'),
    rows: new Map(finds.map((find, index) => [index + 2, find])),
    doubled: new Set(),
  };
}

/**
 * Tabs between cells after a byte-order mark, other names in another order, sizes with units of their own here and
 * there, blanks, rows twice over, and a formula for a cell.
 */
export function tabbedList(finds: readonly InventedFind[], seed: string): MadeList {
  const chance = derive(stream(seed), 'tabbed-list');
  const header = [
    'Remarks',
    'Spot date',
    'Find type',
    'Made of',
    'Ctx',
    'Pit No',
    'T',
    'Br',
    'Reach',
    'Mass',
    'Find No',
  ];
  const size = (mm: number): string => {
    const dice = uniform(chance);
    if (dice < 0.1) return `${(mm / 10).toFixed(1)} cm`;
    if (dice < 0.2) return `${mm} mm`;
    return dice < 0.24 ? '' : String(mm);
  };
  const rows = new Map<number, InventedFind>();
  const doubled = new Set<number>();
  const lines: string[] = [header.join('\t')];
  const formulaAt = Math.floor(finds.length / 2);
  for (const [index, find] of finds.entries()) {
    const { number, pit, context, thing, lengthMm, widthMm, thicknessMm, massG, isBroken } = find;
    const line = [
      isBroken ? 'broken' : pick(chance, ['', '', 'complete']),
      ENGLISH_AGES[THINGS[thing].age],
      ...THINGS[thing].english,
      context,
      pit,
      size(thicknessMm),
      index === formulaAt ? '=1+1' : size(widthMm),
      size(lengthMm),
      uniform(chance) < 0.1 ? '' : massG,
      number,
    ].join('\t');
    lines.push(line);
    rows.set(lines.length, find);
    if (index % 17 === 5) {
      lines.push(line);
      doubled.add(lines.length);
      rows.set(lines.length, find);
    }
    if (index % 20 === 9) lines.push(header.map(() => '').join('\t'));
  }
  return { name: 'finds.tsv', text: `\uFEFF${lines.join('\n')}\n`, rows, doubled };
}
