import type { HandsFor, TalkChoice, TalkTold } from '../../shared/activities/scorers.ts';
import { say } from '../../shared/words/index.ts';
import type { TalkProps } from './talk-view.ts';

interface Props extends Pick<TalkProps, 'activity' | 'words'> {
  readonly told: TalkTold;
  readonly isHands: boolean;
}

const chosen = (choices: readonly TalkChoice[], rows: readonly HandsFor[]): string | null => {
  const id = rows.find(({ hands }) => hands > 0)?.id;
  return choices.find((choice) => choice.id === id)?.words ?? null;
};

/** Where one stood before and after, what would change one's mind; and why there is no score. */
export function TalkRecord({ activity, words, told, isHands }: Props) {
  return (
    <>
      {isHands ? (
        <HandsRecord activity={activity} words={words} told={told} />
      ) : (
        <OneRecord activity={activity} words={words} told={told} />
      )}
      <p>{say(words.recordWhy)}</p>
    </>
  );
}

type PartProps = Omit<Props, 'isHands'>;

function OneRecord({ activity: { stances, evidence }, words, told }: PartProps) {
  const before = chosen(stances, told.before);
  const after = chosen(stances, told.after);
  const weighs = chosen(evidence, told.weighs);
  return (
    <>
      {before !== null && <p class="record-line">{say(words.stoodBefore, { stance: before })}</p>}
      {after !== null && <p class="record-line">{say(words.stoodAfter, { stance: after })}</p>}
      {told.moved !== null && <p>{say(told.moved > 0 ? words.movedOne : words.stayed)}</p>}
      {weighs !== null && <p>{say(words.weighsOne, { evidence: weighs })}</p>}
    </>
  );
}

function HandsRecord({ activity: { stances, evidence }, words, told }: PartProps) {
  const isBoth = told.before.length > 0 && told.after.length > 0;
  const handsOf = (rows: readonly HandsFor[], id: string): number | string =>
    rows.find((row) => row.id === id)?.hands ?? '–';
  return (
    <>
      {isBoth && (
        <p class="record-line">
          {told.moved === null
            ? say(words.notCompared)
            : told.moved === 0
              ? say(words.movedNone)
              : say(words.moved, { count: told.moved })}
        </p>
      )}
      {(told.before.length > 0 || told.after.length > 0) && (
        <table class="record talk-record">
          <thead>
            <tr>
              <th scope="col">{say(words.colStance)}</th>
              <th scope="col">{say(words.colBefore)}</th>
              <th scope="col">{say(words.colAfter)}</th>
            </tr>
          </thead>
          <tbody>
            {stances.map(({ id, words: stance }) => (
              <tr key={id}>
                <th scope="row">{stance}</th>
                <td class="numbers" data-label={say(words.colBefore)}>
                  {handsOf(told.before, id)}
                </td>
                <td class="numbers" data-label={say(words.colAfter)}>
                  {handsOf(told.after, id)}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {told.weighs.length > 0 && (
        <>
          <h4>{say(words.weighsTitle)}</h4>
          <ul class="talk-weighs">
            {told.weighs.map(({ id, hands }) => (
              <li key={id}>
                {evidence.find((choice) => choice.id === id)?.words}{' '}
                <strong>{say(words.hands, { count: hands })}</strong>
              </li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}
