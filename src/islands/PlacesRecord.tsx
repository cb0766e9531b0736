import type { CompareScore } from '../../shared/activities/scorers.ts';
import { say } from '../../shared/words/index.ts';
import { mostSaid, type Said } from '../stores/compare.ts';
import { pitNumber, placeName, twoPlaces } from '../../shared/telling/compare-words.ts';
import type { CompareProps } from './compare-view.ts';
import { Drawing } from './Drawing.tsx';
import { Mark } from './Mark.tsx';

interface Props extends Pick<CompareProps, 'activity' | 'words' | 'showsWorking'> {
  readonly said: Said;
  readonly result: CompareScore;
}

/** Where each kind lies by the record, beside what was said. */
export function PlacesRecord({ activity, words, showsWorking, said, result }: Props) {
  const { kinds, pits, places } = activity;
  const [first, second] = pits.map(({ cut }) => pitNumber(cut.id));
  const rows = result.working.places?.kinds ?? [];
  const { score, guess } = result;
  const right = rows.filter(({ isRight }) => isRight === true).length;
  return (
    <>
      <p class="record-line">
        {say(words.rightLine, { count: rows.length, right })}{' '}
        {guess !== null && say(words.guessLine, { guess: Math.round(guess * rows.length) })}
      </p>
      <table class="record">
        <thead>
          <tr>
            {[words.colKind, words.colYou, words.colRecord, words.colCounts].map((column) => (
              <th key={say(column)} scope="col">
                {say(column)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {kinds.map(({ id, name, counts }) => {
            const answer = places?.offered.find((place) => place === mostSaid(said, id));
            const record = places?.record[id] ?? 'neither';
            return (
              <tr key={id}>
                <th scope="row" class="record-find">
                  <Drawing find={id} />
                  <span class="record-name">{name}</span>
                </th>
                <td data-label={say(words.colYou)}>
                  {answer === undefined ? say(words.unsaid) : placeName(activity, words, answer)}
                </td>
                <td data-label={say(words.colRecord)}>
                  <div class="record-said">
                    <Mark isSame={answer === record} words={words} />
                    <span>{placeName(activity, words, record)}</span>
                  </div>
                </td>
                <td data-label={say(words.colCounts)} class="numbers">
                  {say(words.countsLine, {
                    first: first ?? '',
                    second: second ?? '',
                    inFirst: counts[0] ?? 0,
                    inSecond: counts[1] ?? 0,
                  })}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
      {showsWorking && score !== null && guess !== null && (
        <details class="working">
          <summary>{say(words.workingTitle)}</summary>
          <p class="numbers">
            {say(words.workingPlaces, {
              agreement: twoPlaces(result.working.places?.agreement ?? 0),
              guess: twoPlaces(guess),
              score: twoPlaces(score),
            })}
          </p>
        </details>
      )}
    </>
  );
}
