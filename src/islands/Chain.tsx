import type { Handover, World } from '../../shared/bartering/index.ts';
import { say } from '../../shared/words/index.ts';
import { countsOf, nameOf, rowWords, type BarterWords } from './barter-view.ts';
import { Thing } from './Thing.tsx';

interface Props {
  readonly world: World;
  readonly words: BarterWords;
  readonly swaps: readonly Handover[];
  /** The aim closes the chain where it was reached. */
  readonly label: string;
}

/** A chain of swaps, one a line: to whom, what was given, what was taken. */
export function Chain({ world, words, swaps, label }: Props) {
  if (swaps.length === 0) return <p class="quiet">{say(words.chainEmpty)}</p>;
  const side = (goods: readonly string[]) =>
    Object.entries(countsOf(goods)).map(([good, count]) => (
      <Thing key={good} world={world} good={good} count={count} />
    ));
  return (
    <ol class="chain" aria-label={label}>
      {swaps.map((swap, index) => (
        <li key={index}>
          <span class="chain-number numbers">{index + 1}</span>
          <span class="unseen">{rowWords(world, words, swap)}</span>
          <span class="chain-row" aria-hidden="true">
            {side(swap.give)}
            <span class="chain-arrow">
              {swap.give.length === 0 ? '←' : '→'} {nameOf(world, swap.with)}
              {swap.take.length === 0 || swap.give.length === 0 ? '' : ' →'}
            </span>
            {side(swap.take)}
          </span>
        </li>
      ))}
    </ol>
  );
}
