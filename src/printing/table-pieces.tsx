import { DrawnHere } from '../player/DrawnHere.tsx';
import { Caution } from './plain-pieces.tsx';
import type { HelperPiece, PrintBlocks } from './print-view.ts';

function Piece({
  piece: { drawn, name, lies, holds },
  number,
}: {
  readonly piece: HelperPiece;
  readonly number: number;
}) {
  return (
    <li>
      <strong class="piece-number numbers">{number}</strong>
      <DrawnHere {...drawn} />
      <span>
        <strong>{name}</strong> {lies}
        {holds.map((hold) => (
          <span key={hold} class="answers-also">
            {hold}
          </span>
        ))}
      </span>
    </li>
  );
}

/** A card for the helper at a table of pieces: half a sheet. */
export function Helper(card: PrintBlocks['helper']) {
  return (
    <section class="helper-card">
      <header>
        <h2>
          {card.title} <span class="paper-aside">{card.aside}</span>
        </h2>
        <p class="small">{card.count}</p>
      </header>
      <div class="helper-pieces">
        <h3>{card.order}</h3>
        <ol>
          {card.pieces.map((piece, index) => (
            <Piece key={index} piece={piece} number={index + 1} />
          ))}
        </ol>
      </div>
      <div class="helper-rules">
        <h3>{card.who.title}</h3>
        <ul>
          {card.who.lines.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
        <p class="small quiet">{card.who.mark}</p>
        {card.rules.map(({ title, text }) => (
          <div key={title}>
            <h3>{title}</h3>
            <p>{text}</p>
          </div>
        ))}
        <p class="small quiet">{card.mark}</p>
      </div>
      <p class="helper-never">
        <strong>{card.never}</strong>
      </p>
    </section>
  );
}

/** So many pieces stand smaller, that all stand on the sheet. */
const MOST_LARGE = 6;

/** A poster for the table, read standing. */
export function Poster({ title, pieces, rules, caution }: PrintBlocks['poster']) {
  return (
    <section class="poster">
      <h2>{title}</h2>
      <ol class="poster-pieces" data-many={pieces.length > MOST_LARGE}>
        {pieces.map(({ drawn, near }, index) => (
          <li key={index}>
            <DrawnHere {...drawn} />
            <span class="piece-number numbers">{index + 1}</span>
            <span class="poster-near">{near}</span>
          </li>
        ))}
      </ol>
      <ul class="poster-rules">
        {rules.map((rule) => (
          <li key={rule}>{rule}</li>
        ))}
      </ul>
      <Caution {...caution} />
    </section>
  );
}
