import type { Sheet, SheetThing } from '../../../shared/activities/index.ts';
import { catalogues, say } from '../../../shared/words/index.ts';
import { worthWords } from '../../components/paper-words.ts';
import type { BlockView, CardView, ThingsView, ThingView } from '../../player/papers/paper-view.ts';
import type { Drawings } from '../drawings.ts';

const { site, sort, order, barter, barterClass, barterPaper } = catalogues.en;

export type CardSheet = Extract<
  Sheet,
  { readonly part: 'cards' | 'step-cards' | 'trader-cards' | 'want-cards' }
>;
type SheetOf<Part extends Sheet['part']> = Extract<Sheet, { readonly part: Part }>;

const text = (words: string): BlockView => ({ block: 'text', text: words });
const cardsOf = (how: readonly string[], cards: readonly CardView[]): readonly BlockView[] => [
  ...how.map(text),
  { block: 'cards', cards },
];

const findCards = ({ cards }: SheetOf<'cards'>, drawings: Drawings): readonly BlockView[] =>
  cardsOf(
    [site.cardsHow],
    cards.map(({ drawing, plain, number }) => ({
      card: 'find',
      drawn: drawings.find(drawing, 'full'),
      plain,
      size: say(sort.sizeLine, {
        length: drawing.lengthMm,
        width: drawing.widthMm,
        thickness: drawing.thicknessMm,
      }),
      number,
    })),
  );

const stepCards = ({ cards }: SheetOf<'step-cards'>, drawings: Drawings): readonly BlockView[] =>
  cardsOf(
    [order.paperCardsHow],
    cards.map(({ drawing, name, letter }) => ({
      card: 'step',
      drawn: drawings.step(drawing),
      name,
      letter,
    })),
  );

function traderCards(
  { cards, showsWorths }: SheetOf<'trader-cards'>,
  drawings: Drawings,
): readonly BlockView[] {
  const thing = ({ good, words }: SheetThing, aside: string | null = null): ThingView => ({
    drawn: drawings.good(good),
    words,
    aside,
  });
  return cardsOf(
    [barterPaper.traderCardsHow, showsWorths ? barter.worthNote : barterPaper.cardRanks],
    cards.map(({ name, isPupil, has, wants, isShut, returns }) => ({
      card: 'trader',
      name,
      has: {
        label: isPupil ? barter.youHave : barter.has,
        things: has.map((each) => ({ ...thing(each), rank: null })),
      },
      wants: {
        label: isPupil ? barter.youWould : barter.would,
        things: wants.map((each) => ({
          ...thing(each, showsWorths ? worthWords(each.worths) : null),
          rank: each.rank,
        })),
      },
      notes: [
        ...(isShut ? [barterPaper.cardShut] : []),
        ...(returns === null ? [] : [say(barterPaper.cardReturns, { thing: returns })]),
      ],
    })),
  );
}

function wantCards({ cards }: SheetOf<'want-cards'>, drawings: Drawings): readonly BlockView[] {
  const things = (label: string, of: readonly (SheetThing & { readonly worth: number })[]): ThingsView => ({
    label,
    things: of.map(({ good, words, worth }) => ({
      drawn: drawings.good(good),
      words,
      aside: String(worth),
      rank: null,
    })),
  });
  return cardsOf(
    [`${say(barterPaper.classCardsHow, { count: cards.length })} ${barterClass.cardNote}`],
    cards.map(({ number, has, wants }) => ({
      card: 'want',
      number,
      has: things(barterClass.cardHas, [has]),
      wants: things(barterClass.cardWants, wants),
    })),
  );
}

/** The cards of a sheet, to be cut out, with how they are used. */
export function cardBlocks(sheet: CardSheet, drawings: Drawings): readonly BlockView[] {
  switch (sheet.part) {
    case 'cards':
      return findCards(sheet, drawings);
    case 'step-cards':
      return stepCards(sheet, drawings);
    case 'trader-cards':
      return traderCards(sheet, drawings);
    case 'want-cards':
      return wantCards(sheet, drawings);
    default:
      return sheet satisfies never;
  }
}
