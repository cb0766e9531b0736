import type { Band } from '../library/index.ts';
import { draftingWords as words } from '../words/en/drafting.ts';
import { axesOf } from './axes.ts';
import { meritOf, type DraftContext, type Drafted, type MeritPart } from './draft.ts';

/** How many traders a band meets, the fewest swaps, and how long it takes. ASM. */
const GATHERINGS: Readonly<
  Record<Band, { readonly traders: number; readonly chain: number; readonly minutes: number }>
> = {
  '4-5': { traders: 2, chain: 2, minutes: 8 },
  '5-7': { traders: 3, chain: 2, minutes: 10 },
  '7-9': { traders: 4, chain: 3, minutes: 15 },
  '9-11': { traders: 5, chain: 3, minutes: 15 },
  '11-14': { traders: 6, chain: 4, minutes: 20 },
  '14-16': { traders: 6, chain: 4, minutes: 20 },
};

/** A gathering without money. Its people are made up, so it stands behind what is made of the site's own finds. */
export function* draftBarter(context: DraftContext): Generator<void, Drafted, void> {
  yield;
  const { traders, chain, minutes } = GATHERINGS[context.limits.band];
  if (minutes > context.minutesMost)
    return { candidates: [], lacking: [words.lackTime(context.minutesMost, minutes)] };
  const [axe] = axesOf(context);
  const name =
    context.library.vocabulary.objectTypes.find(({ id }) => id === axe?.attributes['object-type'])?.label ??
    '';
  const parts: readonly MeritPart[] = [
    { name: 'fit', weight: 0.5, value: 0.7, told: words.fit(context.limits.label) },
    {
      name: 'evidence',
      weight: 0.5,
      value: axe === undefined ? 0.2 : 0.5,
      told: axe === undefined ? words.lackAxe() : words.evidenceAxe(name),
    },
  ];
  return {
    candidates: [
      {
        place: 5,
        title: words.barterTitle(),
        minutes,
        lines: [
          'make:',
          `  traders: ${traders}`,
          `  chain: ${chain}`,
          '  goods: [hide, flint, pot, hazelnuts, axe, cord, basket, antler]',
          '  aim: axe',
        ],
        merit: meritOf(parts),
        parts,
        finds: [],
        summary: words.barterSummary(traders, chain),
      },
    ],
    lacking: [],
  };
}
