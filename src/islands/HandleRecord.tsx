import type { HandlePiece, HandleTold, Sense } from '../../shared/activities/scorers.ts';
import { say } from '../../shared/words/index.ts';
import { Drawing } from './Drawing.tsx';
import { isWords, type HandleProps } from './handle-view.ts';

interface Props extends Pick<HandleProps, 'activity' | 'words'> {
  readonly told: HandleTold;
  readonly isHands: boolean;
}

/** What was met, what one would ask about, and what the record says of each piece. There is no score, and it says why. */
export function HandleRecord({ activity, words, told, isHands }: Props) {
  const { pieces } = activity;
  const asked = told.asks.flatMap(({ piece, hands }) => {
    const place = pieces.findIndex(({ id }) => id === piece);
    return place === -1 ? [] : [{ piece, place, hands, name: pieces[place]?.name ?? '' }];
  });
  return (
    <>
      <p class="record-line">{say(words.recordMet, { count: told.met.length, all: pieces.length })}</p>
      <p>{say(words.recordWhy)}</p>
      {asked.length > 0 && (
        <ul class="handle-asked">
          {asked.map(({ piece, place, hands, name }) => (
            <li key={piece}>
              {say(isHands ? words.recordAskHands : words.recordAsk, {
                piece: place + 1,
                name,
                count: hands,
              })}
            </li>
          ))}
        </ul>
      )}
      <table class="record">
        <thead>
          <tr>
            {[words.colPiece, words.colYou, words.colRecord, words.colHow].map((column) => (
              <th key={say(column)} scope="col">
                {say(column)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {pieces.map((piece) => (
            <Row
              key={piece.id}
              piece={piece}
              words={words}
              senses={told.met.find((row) => row.piece === piece.id)?.senses ?? []}
            />
          ))}
        </tbody>
      </table>
      <p class="small quiet">{say(words.signsSource, { source: activity.signsSource })}</p>
    </>
  );
}

interface RowProps extends Pick<HandleProps, 'words'> {
  readonly piece: HandlePiece;
  readonly senses: readonly Sense[];
}

function Row({ piece, words, senses }: RowProps) {
  const { id, plain, name, material, is, sign, note } = piece;
  const did = { look: words.lookedAt, feel: words.felt, listen: words.listenedTo };
  return (
    <tr>
      <th scope="row" class="record-find">
        <Drawing find={id} />
        <span>{plain}</span>
      </th>
      <td data-label={say(words.colYou)}>
        {senses.length === 0 ? say(words.nothingYet) : senses.map((sense) => say(did[sense])).join(', ')}
      </td>
      <td data-label={say(words.colRecord)}>
        {say(words.recordIs, { name, material, is: say(isWords(words)[is]) })}
      </td>
      <td data-label={say(words.colHow)}>
        <div>
          {sign} {note !== null && <span class="record-also">{note}</span>}
        </div>
      </td>
    </tr>
  );
}
