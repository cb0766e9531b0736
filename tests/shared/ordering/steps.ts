import { readSteps, type Precedence, type Step } from '../../../shared/ordering/index.ts';

/** Numbered steps 0 to size - 1 with arrows [before, after]. */
export const numbered = (size: number, arrows: readonly (readonly number[])[]): readonly Step[] =>
  Array.from({ length: size }, (_, step) => ({
    id: String(step),
    mustFollow: arrows.flatMap(([before, after]) => (after === step ? [String(before)] : [])),
  }));

/** What comes before what among steps that have no cycle. */
export function ordered(steps: readonly Step[]): Precedence {
  const { precedence, cycle } = readSteps(steps);
  if (precedence === null) throw new Error(`unexpected cycle: ${cycle.join(', ')}`);
  return precedence;
}

/** The eight steps of an axe, drawn arrows only. */
export const axeSteps: readonly Step[] = [
  { id: 'find-nodule', mustFollow: [] },
  { id: 'rough-out', mustFollow: ['find-nodule'] },
  { id: 'grind', mustFollow: ['rough-out'] },
  { id: 'polish', mustFollow: ['grind'] },
  { id: 'cut-haft-wood', mustFollow: [] },
  { id: 'cut-socket', mustFollow: ['cut-haft-wood', 'rough-out'] },
  { id: 'fit', mustFollow: ['cut-socket', 'polish'] },
  { id: 'bind', mustFollow: ['fit'] },
];

/** Every order of some items; for checks by brute force only. */
export function allOrders<Item>(items: readonly Item[]): Item[][] {
  if (items.length === 0) return [[]];
  return items.flatMap((item, index) =>
    allOrders(items.filter((_, other) => other !== index)).map((rest) => [item, ...rest]),
  );
}
