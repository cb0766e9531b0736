import { worthTo } from '../../shared/bartering/index.ts';
import { say } from '../../shared/words/index.ts';
import type { ClassStore, ClassTable } from '../stores/barter-class.ts';
import type { ClassWords } from './barter-class-view.ts';
import { Hands } from './Hands.tsx';

interface Props {
  readonly words: ClassWords;
  readonly table: ClassTable;
  readonly store: ClassStore;
}

/** Hands up for each gain there can be with these cards, from none to the greatest. */
export function BarterClassHands({ words, table, store }: Props) {
  const greatest = Math.max(
    ...table.deal.cards.map((card) =>
      Math.max(...Object.values(card.wants).map(([worth = 0]) => worth - worthTo(card, card.holds))),
    ),
  );
  const gains = Array.from({ length: greatest + 1 }, (_, gain) => gain);
  return (
    <section class="class-hands">
      <h3>{say(words.classHands)}</h3>
      <p>{say(words.classSteps)}</p>
      <ul>
        {gains.map((gain) => {
          const label = say(words.classGain, { gain });
          return (
            <li key={gain}>
              <span>{label}</span>
              <Hands
                count={table.gains[gain] ?? 0}
                labels={{
                  exact: say(words.classGainHands, { gain }),
                  more: say(words.classGainMore, { gain }),
                  fewer: say(words.classGainFewer, { gain }),
                }}
                onCount={(hands) => store.countHands(gain, hands)}
              />
            </li>
          );
        })}
      </ul>
    </section>
  );
}
