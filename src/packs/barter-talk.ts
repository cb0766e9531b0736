import { RULES } from '../../shared/bartering/index.ts';
import { catalogues } from '../../shared/words/index.ts';
import { statusWords } from '../components/status-words.ts';
import type { TalkView } from '../player/lesson-view.ts';

const words = catalogues.en.barterPaper;

/** What to talk about after a gathering, and where its rules come from. */
export const barterTalk = (): TalkView => ({
  title: words.talkTitle,
  lead: words.talkLead,
  prompts: [words.talkOne, words.talkTwo, words.talkThree, words.talkFour, words.talkFive],
  rulesTitle: words.rulesTitle,
  rules: RULES.map(({ rule, source, status }) => ({
    rule,
    source: status === 'ASM' ? source : `${source} (${statusWords(status)})`,
  })),
});
