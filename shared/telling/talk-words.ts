import type { Voice } from '../activities/scorers.ts';
import { catalogues, say } from '../words/index.ts';
import { statusWords } from './status-words.ts';

const words = catalogues.en.talk;

/** Where a voice comes from, in words. */
export function voiceFrom({ source }: Voice): string {
  switch (source.from) {
    case 'work':
      return say(words.fromWork, { citation: source.citation, status: statusWords(source.status) });
    case 'practice':
      return words.fromPractice;
    case 'invented':
      return words.fromInvented;
    default:
      return source satisfies never;
  }
}
