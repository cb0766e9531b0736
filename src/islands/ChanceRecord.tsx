import type { ComparePair, CompareScore } from '../../shared/activities/scorers.ts';
import { say } from '../../shared/words/index.ts';
import { mostSaid, type Said } from '../stores/compare.ts';
import { afterOf, beforeOf, saidAlike } from './chance-questions.ts';
import { chanceLine, likenessText, pitNumber, twoPlaces } from '../../shared/telling/compare-words.ts';
import type { CompareProps } from './compare-view.ts';
import { Mark } from './Mark.tsx';

interface Props extends Pick<CompareProps, 'activity' | 'words' | 'showsWorking'> {
  readonly said: Said;
  readonly result: CompareScore;
}

/** How alike each pair is and what chance does by the record, beside what was said before and after the shuffles. */
export function ChanceRecord({ activity, words, showsWorking, said, result }: Props) {
  const { pits, chance } = activity;
  const pairs = chance?.pairs ?? [];
  const { likeness, judgement } = result.working;
  const judged = (question: string): string => {
    const answer = mostSaid(said, question);
    return answer === 'chance-could' || answer === 'chance-hardly' ? say(words[answer]) : say(words.unsaid);
  };
  const rightBy = (question: (pair: ComparePair) => string): number =>
    pairs.filter((pair) => mostSaid(said, question(pair)) === pair.record).length;
  const number = (place: number): string => pitNumber(pits[place]?.cut.id);
  return (
    <>
      <p class="record-line">
        {say(words.judgeLine, { count: pairs.length, right: rightBy(afterOf), before: rightBy(beforeOf) })}
      </p>
      {likeness !== null && <p>{say(words.alikeLine, { count: likeness.twos, right: likeness.right })}</p>}
      <table class="record">
        <thead>
          <tr>
            {[words.colPits, words.colAlike, words.colYou, words.colRecord].map((column) => (
              <th key={say(column)} scope="col">
                {say(column)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {pairs.map((pair) => {
            const alike = saidAlike(activity, said, pair);
            const record = likenessText(pair.likeness, chance?.most ?? 1);
            return (
              <tr key={pair.id}>
                <th scope="row">
                  <span class="record-name">
                    {say(words.pairName, { first: number(pair.first), second: number(pair.second) })}
                  </span>
                </th>
                <td data-label={say(words.colAlike)} class="numbers">
                  {alike === null
                    ? say(words.alikeRecord, { record })
                    : say(words.alikeYouRecord, { said: likenessText(alike, chance?.most ?? 1), record })}
                </td>
                <td data-label={say(words.colYou)}>
                  {say(words.judgedTwice, {
                    before: judged(beforeOf(pair)),
                    after: judged(afterOf(pair)),
                  })}
                </td>
                <td data-label={say(words.colRecord)}>
                  <div class="record-said">
                    <Mark isSame={mostSaid(said, afterOf(pair)) === pair.record} words={words} />
                    <span>
                      {say(words[pair.record])}
                      <span class="record-also numbers">{chanceLine(words, pair.tally)}</span>
                    </span>
                  </div>
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
      {showsWorking && result.score !== null && (
        <details class="working">
          <summary>{say(words.workingTitle)}</summary>
          <p class="numbers">
            {say(words.workingChance, {
              right: likeness?.right ?? 0,
              wrong: likeness?.wrong ?? 0,
              twos: likeness?.twos ?? 0,
              likeness: twoPlaces(likeness?.score ?? 0),
              judgement: twoPlaces(judgement?.after.score ?? 0),
              score: twoPlaces(result.score),
            })}
          </p>
        </details>
      )}
      {chance !== null && (
        <p class="small quiet">
          {say(
            {
              jaccard: words.measureJaccard,
              dice: words.measureDice,
              'brainerd-robinson': words.measureBrainerdRobinson,
            }[chance.by],
          )}
        </p>
      )}
    </>
  );
}
