/** Where a rule of the gathering comes from: a source, or this game alone. */
export interface Rule {
  readonly id: string;
  readonly rule: string;
  /** RF re-found, FM from memory, ASM ours. */
  readonly status: 'RF' | 'FM' | 'ASM';
  readonly source: string;
}

const OWN = "this game's own rule";

/** Every rule of the gathering, for the sources page and the talk about where the game is wrong. */
export const RULES: readonly Rule[] = [
  {
    id: 'both-better',
    rule: 'A swap happens only when each side would rather have what it gets than what it gives.',
    status: 'FM',
    source: 'Jevons 1875, Money and the Mechanism of Exchange, ch. 1 (double coincidence of wants)',
  },
  {
    id: 'wants-fall',
    rule: 'A second of the same thing is never worth more than the first.',
    status: 'FM',
    source: 'Jevons 1871, The Theory of Political Economy, ch. 3 (final degree of utility)',
  },
  { id: 'wants-add', rule: 'Wants of different things add up.', status: 'ASM', source: OWN },
  {
    id: 'swap-onward',
    rule: 'A thing may be wanted only because someone else will take it.',
    status: 'FM',
    source: 'Kiyotaki & Wright 1989, Journal of Political Economy 97: 927-954',
  },
  {
    id: 'gift-owed',
    rule: 'A gift leaves the taker owing one in return, and both remember it.',
    status: 'FM',
    source: 'Mauss 1925, Essai sur le don; Sahlins 1972, Stone Age Economics, ch. 5 (balanced reciprocity)',
  },
  { id: 'gift-later', rule: 'The return comes later, never at the same visit.', status: 'ASM', source: OWN },
  {
    id: 'gift-known',
    rule: 'What comes in return for a gift is known beforehand.',
    status: 'ASM',
    source: OWN,
  },
  {
    id: 'gift-door',
    rule: 'Some swap only with those who have given them something.',
    status: 'FM',
    source: 'Sahlins 1972, Stone Age Economics, ch. 5 (how near people are decides how they exchange)',
  },
  {
    id: 'only-given',
    rule: 'Some things are never swapped, only given.',
    status: 'FM',
    source: 'Mauss 1925, Essai sur le don; which things these are here is invented',
  },
  {
    id: 'spoils',
    rule: 'Food spoils after a set number of handovers, all of it at once.',
    status: 'ASM',
    source: OWN,
  },
  { id: 'one-side-single', rule: 'One side of a swap is a single thing.', status: 'ASM', source: OWN },
  {
    id: 'no-makeweights',
    rule: 'Nobody takes a thing they have no use for, not even beside another.',
    status: 'ASM',
    source: OWN,
  },
  {
    id: 'others-wait',
    rule: 'The others swap only with you, not with each other.',
    status: 'ASM',
    source: OWN,
  },
];
