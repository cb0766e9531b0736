import type { ActivityOf, KindName } from '../activities/index.ts';
import { catalogues, say, wordsFor } from '../words/index.ts';

const words = catalogues.en.site;
const estimateWords = catalogues.en.estimatePapers;
const { handlePapers } = catalogues.en;

const lines: { readonly [K in KindName]: (activity: ActivityOf<K>) => string } = {
  compare: ({ pits, kinds, chance }) =>
    chance === null
      ? say(words.notesCompare, {
          pits: pits.map(({ cut }) => cut.id.replace(/^P/, '')).join(', '),
          kinds: kinds.length,
        })
      : say(words.notesCompareChance, { pairs: chance.pairs.length }),
  barter: (activity) => {
    const { barterPaper } = catalogues.en;
    if (activity.play === 'class') return say(barterPaper.notesClass, { pupils: activity.deal.cards.length });
    const { world, par } = activity;
    const aim = world.goods.find(({ id }) => id === world.aim)?.one ?? world.aim;
    return say(barterPaper.notesGathering, { count: world.traders.length, aim, par });
  },
  estimate: ({ question }) => say(estimateWords.notesEstimate, { question }),
  handle: ({ pieces, question }) =>
    say(handlePapers.notesLine, {
      count: pieces.length,
      question: question ?? say(wordsFor(catalogues.en.handle, '14-16').question),
    }),
  talk: ({ question }) => say(catalogues.en.talk.notesLine, { question }),
  order: ({ steps, validOrders }) =>
    say(words.notesOrder, { steps: steps.length, orders: validOrders ?? words.notesOrdersMany }),
  sort: ({ finds, question }) => {
    const pits = [...new Set(finds.map(({ pit }) => pit.replace(/^P/, '')))].toSorted();
    return say(words.notesSort, {
      finds: finds.length,
      pits: say(words.notesPits, { count: pits.length, pits: pits.join(', ') }),
      question,
    });
  },
};

/** What pupils do in an activity, in one line of the teacher notes. */
export const notesLine = <K extends KindName>(activity: ActivityOf<K> & { kind: K }): string =>
  lines[activity.kind](activity);

const during: Readonly<Record<KindName, string>> = {
  compare: words.notesDuringCompare,
  barter: catalogues.en.barterPaper.notesDuring,
  estimate: estimateWords.notesDuring,
  handle: handlePapers.notesDuring,
  order: words.notesDuringOrder,
  sort: words.notesDuringText,
  talk: catalogues.en.talk.notesDuring,
};

/** What to ask for while pupils do it. */
export const duringLine = (kind: KindName): string => during[kind];
