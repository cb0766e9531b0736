import { catalogues, say } from '../../shared/words/index.ts';

const { barter } = catalogues.en;

/** What a first, second, third of a thing matters, in words. @example worthWords([5, 2]) // '5, then 2' */
export const worthWords = ([first = 0, ...rest]: readonly number[]): string =>
  rest.length === 0
    ? say(barter.worthOne, { first })
    : say(barter.worthMore, { first, rest: rest.join(', ') });
