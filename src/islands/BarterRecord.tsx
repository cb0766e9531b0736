import { scoreGathering } from '../../shared/activities/scorers.ts';
import { shorterChain, type Handover } from '../../shared/bartering/index.ts';
import { say } from '../../shared/words/index.ts';
import { goodWords, nameOf, type BarterProps } from './barter-view.ts';
import { BarterViews } from './BarterViews.tsx';
import { Chain } from './Chain.tsx';
import { noted } from '../stores/plays.ts';

interface Props extends Pick<BarterProps, 'activity' | 'words' | 'showsWorking' | 'showsViews'> {
  readonly swaps: readonly Handover[];
}

const twoPlaces = (value: number): string => value.toFixed(2).replace('-', '−');

/** The chain, one that is shorter where there is one, and who is better off. */
export function BarterRecord({ activity, words, showsWorking, showsViews, swaps }: Props) {
  const { world, par, chains } = activity;
  const { score, guess, working } = scoreGathering(activity, noted({ activity: activity.id, swaps }));
  const shorter = shorterChain(world, swaps);
  const aim = goodWords(world, world.aim);
  const { handovers, reached, share, betterOff } = working;
  const aimless = say(words.aimlessLine, {
    you: Math.round(100 * share),
    aimless: Math.round(100 * guess),
  });
  return (
    <>
      <p class="record-line">
        {say(reached ? words.homeLine : words.stuckLine, { aim, count: handovers })}{' '}
        {reached && handovers === par
          ? say(words.isPar, { count: chains })
          : say(words.parLine, { count: par })}
      </p>
      {aimless !== '' && <p>{aimless}</p>}
      <div class="chains">
        <section>
          <h4>{say(words.yourChain)}</h4>
          <Chain world={world} words={words} swaps={swaps} label={say(words.yourChain)} />
        </section>
        {shorter !== null && (
          <section>
            <h4>{say(reached ? words.shorterChain : words.wayThere)}</h4>
            {shorter.keeps > 0 && <p class="small">{say(words.shorterSame, { count: shorter.keeps })}</p>}
            <Chain world={world} words={words} swaps={shorter.chain} label={say(words.shorterChain)} />
          </section>
        )}
      </div>
      <h4>{say(words.gainTitle)}</h4>
      {showsWorking ? (
        <>
          <ul class="gains">
            {betterOff.map(({ trader, gain }) => (
              <li key={trader} class="numbers">
                {say(words.gainLine, { name: nameOf(world, trader), gain })}
              </li>
            ))}
          </ul>
          <p class="small quiet">{say(words.gainNote)}</p>
        </>
      ) : (
        <p>{say(words.gainAll)}</p>
      )}
      {showsViews && <BarterViews activity={activity} words={words} swaps={swaps} />}
      {showsWorking && score !== null && (
        <details class="working">
          <summary>{say(words.workingTitle)}</summary>
          <p class="numbers">
            {say(reached ? words.workingLine : words.workingStuck, {
              par,
              handovers,
              share: twoPlaces(share),
              guess: twoPlaces(guess),
              score: twoPlaces(score),
            })}
          </p>
        </details>
      )}
    </>
  );
}
