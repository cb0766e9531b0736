import type { Fault } from '../lesson/problem.ts';
import { quoted } from '../words/en/problems.ts';
import { caseWords } from '../words/en/case.ts';
import type { ReadItem, ReadPackage } from './package-schema.ts';

/** The tree of a package: what is above each item, the nearest first, and which items have nothing below them. */
export interface ItemTree {
  readonly above: (identifier: string) => readonly ReadItem[];
  readonly isLeaf: (identifier: string) => boolean;
  readonly faults: readonly Fault[];
}

const key = (identifier: string): string => identifier.toLowerCase();

/** Reads the tree from the associations `isChildOf`. An item with two parents keeps the first. */
export function itemTree({ CFDocument, CFItems = [], CFAssociations = [] }: ReadPackage): ItemTree {
  const items = new Map<string, ReadItem>();
  const faults: Fault[] = [];
  for (const [index, item] of CFItems.entries()) {
    if (items.has(key(item.identifier))) {
      const path = ['CFItems', index, 'identifier'];
      const told = caseWords.identifierRepeated(quoted(items.get(key(item.identifier))?.fullStatement ?? ''));
      faults.push({ code: 'id-repeated', grade: 'error', path, ...told });
    } else items.set(key(item.identifier), item);
  }
  const parents = new Map<string, ReadItem>();
  const holders = new Set<string>();
  for (const [index, tie] of CFAssociations.entries()) {
    if (tie.associationType !== 'isChildOf') continue;
    const { originNodeURI: child, destinationNodeURI: above } = tie;
    const parent = items.get(key(above.identifier));
    const isTop = key(above.identifier) === key(CFDocument.identifier);
    for (const [end, node, isKnown] of [
      ['originNodeURI', child, items.has(key(child.identifier))],
      ['destinationNodeURI', above, isTop || parent !== undefined],
    ] as const) {
      if (isKnown) continue;
      const path = ['CFAssociations', index, end, 'identifier'];
      const told = caseWords.endUnknown(quoted(node.title === '' ? node.identifier : node.title));
      faults.push({ code: 'word-unknown', grade: 'error', path, ...told });
    }
    if (parent === undefined || parents.has(key(child.identifier))) continue;
    parents.set(key(child.identifier), parent);
    holders.add(key(parent.identifier));
  }
  const above = (identifier: string): readonly ReadItem[] => {
    const path: ReadItem[] = [];
    let next = parents.get(key(identifier));
    while (next !== undefined && !path.includes(next)) {
      path.push(next);
      next = parents.get(key(next.identifier));
    }
    return path;
  };
  const circling = CFItems.findIndex((item) => above(item.identifier).includes(item));
  const circle = CFItems[circling];
  if (circle !== undefined) {
    const told = caseWords.circle(quoted(circle.fullStatement));
    faults.push({ code: 'value-unfit', grade: 'error', path: ['CFItems', circling], ...told });
  }
  return { above, isLeaf: (identifier) => !holders.has(key(identifier)), faults };
}
