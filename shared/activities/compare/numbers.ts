import type { AskedNumber } from '../kind.ts';
import type { CompareActivity } from './activity.ts';
import type { CompareBlock } from './schema.ts';

/** The numbers a comparison asks its pupils to read: pieces of a kind, and, of chance, likeness and shuffles. */
export function numbersInCompare(
  { kinds, chance }: CompareActivity,
  block: CompareBlock,
): readonly AskedNumber[] {
  const most = kinds.toSorted((a, b) => Math.max(...b.counts) - Math.max(...a.counts))[0];
  const place = block.kinds?.indexOf(most?.id ?? '') ?? -1;
  const pieces: AskedNumber = {
    value: Math.max(0, ...(most?.counts ?? [])),
    form: 'whole',
    what: 'pieces',
    path: place < 0 ? ['pits'] : ['kinds', place],
  };
  if (chance === null) return [pieces];
  const isShare = chance.most === 1;
  const by = block.by === undefined ? ['ask'] : ['by'];
  return [
    pieces,
    {
      value: isShare ? 1 : Math.max(...chance.pairs.map(({ likeness }) => Math.round(likeness))),
      form: isShare ? 'decimals' : 'whole',
      what: 'likeness',
      path: by,
    },
    {
      value: Math.max(...chance.pairs.map(({ tally }) => tally.draws)),
      form: 'whole',
      what: 'shuffles',
      path: ['ask'],
    },
  ];
}
