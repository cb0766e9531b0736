import type { Trader, World } from '../../shared/bartering/index.ts';
import { say } from '../../shared/words/index.ts';
import type { BarterWords } from './barter-view.ts';
import { Thing } from './Thing.tsx';

interface Props {
  readonly world: World;
  readonly trader: Trader;
  readonly words: BarterWords;
  readonly label: string;
}

/** What a trader would like, most first; what they want alike stands on one line. */
export function Wants({ world, trader, words, label }: Props) {
  const wanted = world.goods
    .map(({ id }) => ({ id, worths: (trader.wants[id] ?? []).filter((worth) => worth > 0) }))
    .filter(({ worths }) => worths.length > 0);
  const ranks = [...new Set(wanted.map(({ worths }) => worths[0] ?? 0))].toSorted((a, b) => b - a);
  // Where one thing goes against one, the order says all; where two may go against one, numbers are needed.
  const worthWords = ([first = 0, ...rest]: readonly number[]): string =>
    rest.length === 0
      ? say(words.worthOne, { first })
      : say(words.worthMore, { first, rest: rest.join(', ') });
  return (
    <ol class="wants" aria-label={label}>
      {ranks.map((rank) => (
        <li key={rank}>
          <span class="wants-same">
            {wanted
              .filter(({ worths }) => worths[0] === rank)
              .map(({ id, worths }, index) => (
                <>
                  {index > 0 && <span class="quiet small"> {say(words.same)} </span>}
                  <Thing
                    world={world}
                    good={id}
                    {...(world.bundle > 1 ? { worth: worthWords(worths) } : {})}
                  />
                </>
              ))}
          </span>
        </li>
      ))}
    </ol>
  );
}
