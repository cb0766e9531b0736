import { say } from '../../shared/words/index.ts';
import type {
  FindFeedback,
  SortActivity,
  SortFind,
  SortScore,
  SortTray,
} from '../../shared/activities/scorers.ts';
import { Drawing } from './Drawing.tsx';
import type { SortProps, SortWords } from './sort-view.ts';

interface Props extends Pick<SortProps, 'activity' | 'words' | 'showsWorking' | 'attributes'> {
  readonly result: SortScore;
  readonly trays: readonly SortTray[];
  readonly isHands: boolean;
}

const twoPlaces = (value: number): string => value.toFixed(2).replace('-', '−');

/** What you said, what the record says, how we know: side by side, marked by shape, place and word. */
export function RecordCard({ activity, words, result, trays, isHands, showsWorking, attributes }: Props) {
  const { finds, agreeing, agreeingByGuess, feedback } = result.working;
  const percent = (share: number): number => Math.round((100 * share) / finds);
  return (
    <>
      {activity.ownTrays ? (
        <OwnTrays result={result} words={words} attributes={attributes} />
      ) : (
        <p class="record-line">
          {isHands ? (
            say(words.handsAgreeLine, { percent: percent(agreeing), guess: percent(agreeingByGuess) })
          ) : (
            <>
              {say(words.agreeLine, { count: finds, agreeing: Math.round(agreeing * 10) / 10 })}{' '}
              {say(words.guessLine, { guess: Math.round(agreeingByGuess) })}
            </>
          )}
        </p>
      )}
      <table class="record">
        <thead>
          <tr>
            <th scope="col">{say(words.colFind)}</th>
            <th scope="col">{say(words.colYou)}</th>
            <th scope="col">{say(words.colRecord)}</th>
            <th scope="col">{say(words.colHow)}</th>
          </tr>
        </thead>
        <tbody>
          {feedback.map((entry) => (
            <Row key={entry.find} entry={entry} activity={activity} words={words} trays={trays} />
          ))}
        </tbody>
      </table>
      {showsWorking && result.score !== null && !activity.ownTrays && (
        <details class="working">
          <summary>{say(words.workingTitle)}</summary>
          <p class="numbers">
            {say(words.workingLine, {
              observed: twoPlaces(agreeing / finds),
              expected: twoPlaces(agreeingByGuess / finds),
              score: twoPlaces(result.score),
            })}
          </p>
        </details>
      )}
      <p class="small quiet">{say(words.sourceLine, { source: activity.signsSource })}</p>
    </>
  );
}

function OwnTrays({ result, words, attributes }: Pick<Props, 'result' | 'words' | 'attributes'>) {
  const followed = result.working.followed;
  const isFollowed = followed !== undefined && (result.score ?? 0) > 0.1;
  return (
    <p class="record-line">
      {isFollowed
        ? say(words.followedLine, { attribute: attributes[followed.attribute] ?? followed.attribute })
        : say(words.followedNone)}
    </p>
  );
}

interface RowProps {
  readonly entry: FindFeedback;
  readonly activity: SortActivity;
  readonly words: SortWords;
  readonly trays: readonly SortTray[];
}

const nameOf = (trays: readonly SortTray[], id: string | null): string | null =>
  trays.find((tray) => tray.id === id)?.name ?? null;

function Row({ entry, activity, words, trays }: RowProps) {
  const find: SortFind | undefined = activity.finds.find(({ id }) => id === entry.find);
  if (find === undefined) return null;
  const [home, ...others] = find.homes;
  const isSame = entry.agrees === 'record' || entry.agrees === 'argument';
  const mark = say(
    entry.agrees === 'record' ? words.same : entry.agrees === 'argument' ? words.argued : words.other,
  );
  const recorded = home === undefined ? (find.attributes[activity.by] ?? '') : nameOf(trays, home.tray);
  return (
    <tr>
      <th scope="row" class="record-find">
        <Drawing find={find.id} />
        <span>
          <span class="record-name">{find.name}</span> <span class="numbers quiet">△ {find.smallFind}</span>
        </span>
      </th>
      <td data-label={say(words.colYou)}>{nameOf(trays, entry.placed) ?? say(words.unplaced)}</td>
      <td data-label={say(words.colRecord)}>
        <div class="record-said">
          {!activity.ownTrays && (
            <span class="mark" data-mark={isSame ? 'same' : 'other'}>
              <span aria-hidden="true">{isSame ? '=' : '≠'}</span>
              <span class="unseen">{mark}: </span>
            </span>
          )}
          <span>
            {recorded}
            {others.map((other) => (
              <span key={other.tray} class="record-also">
                {say(words.alsoArgued, { tray: nameOf(trays, other.tray) ?? '', because: other.because })}
              </span>
            ))}
          </span>
        </div>
      </td>
      <td data-label={say(words.colHow)}>
        <div>
          {home?.because}{' '}
          {find.note !== null && <span class="quiet">{say(words.noteLine, { note: find.note })}</span>}
        </div>
      </td>
    </tr>
  );
}
