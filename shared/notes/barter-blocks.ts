import type { Sheet } from '../activities/index.ts';
import { barterTalk } from '../telling/barter-talk.ts';
import { catalogues, say } from '../words/index.ts';
import { cell, heading, list, text, type NotesBlock } from './blocks.ts';

const { barter: screen, barterClass, barterPaper } = catalogues.en;

/** What to talk about after a gathering, and the rules of exchange with where each comes from. */
function talkBlocks(): readonly NotesBlock[] {
  const talk = barterTalk();
  return [
    heading(talk.title),
    text(talk.lead),
    list(talk.prompts),
    heading(talk.rulesTitle),
    {
      block: 'table',
      heads: [barterPaper.talkRule, barterPaper.talkFrom],
      rows: talk.rules.map(({ rule, source }) => [cell(rule), cell(source)]),
      isNameWide: true,
    },
  ];
}

/** One of the shortest chains of a gathering. */
export function chainBlocks(sheet: Extract<Sheet, { part: 'chain-answer' }>): readonly NotesBlock[] {
  const steps = sheet.steps.map((step) =>
    say(step.takes === '' ? screen.rowGift : step.gives === '' ? screen.rowReturn : screen.rowSwap, {
      name: step.with,
      given: step.gives,
      taken: step.takes,
    }),
  );
  return [
    text(say(barterPaper.answerPar, { par: sheet.par, count: sheet.chains })),
    { block: 'list', items: steps, isOrdered: true },
    text(barterPaper.answerOther),
    ...talkBlocks(),
  ];
}

/** The best a whole class could do. */
export function classBlocks(sheet: Extract<Sheet, { part: 'class-answer' }>): readonly NotesBlock[] {
  const best = { best: sheet.bestTotal, aimless: Math.round(sheet.aimlessTotal) };
  const possible = sheet.possible ? barterClass.classPossible : barterClass.classNotPossible;
  return [
    text(`${say(possible)} ${say(barterClass.classBest, best)}`),
    text(say(barterClass.classSteps)),
    heading(barterPaper.classPairs),
    text(sheet.straight.map((pair) => pair.join(' – ')).join('; ')),
    heading(barterPaper.classRings),
    list(sheet.rings.map((ring) => ring.join(' ← '))),
    ...talkBlocks(),
  ];
}
