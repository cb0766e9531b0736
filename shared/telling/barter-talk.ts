import { RULES } from '../bartering/index.ts';
import { catalogues } from '../words/index.ts';
import { statusWords } from './status-words.ts';

const words = catalogues.en.barterPaper;

/** What to talk about after a gathering, and the rules of exchange with their sources. */
export interface TalkAfter {
  readonly title: string;
  readonly lead: string;
  readonly prompts: readonly string[];
  readonly rulesTitle: string;
  readonly rules: readonly { readonly rule: string; readonly source: string }[];
}

/** What to talk about after a gathering, and where its rules come from. */
export const barterTalk = (): TalkAfter => ({
  title: words.talkTitle,
  lead: words.talkLead,
  prompts: [words.talkOne, words.talkTwo, words.talkThree, words.talkFour, words.talkFive],
  rulesTitle: words.rulesTitle,
  rules: RULES.map(({ rule, source, status }) => ({
    rule,
    source: status === 'ASM' ? source : `${source} (${statusWords(status)})`,
  })),
});
