import { DrawnHere } from '../DrawnHere.tsx';
import type { Blocks } from './paper-view.ts';

/** A row for each piece in the hand: what to look, feel and listen for, and room to draw. */
export function Pieces({ draw, pieces }: Blocks['pieces']) {
  return (
    <ol class="piece-rows">
      {pieces.map(({ plain, drawn, lies, senses }, index) => (
        <li key={plain} class="piece-row">
          <div>
            <p>
              <strong class="piece-number numbers">{index + 1}</strong> {plain}
            </p>
            <DrawnHere {...drawn} />
            <p class="small">{lies}</p>
          </div>
          <dl>
            {senses.map(({ name, says }) => (
              <div key={`${name} ${says}`}>
                <dt>{name}</dt>
                <dd>{says}</dd>
              </div>
            ))}
          </dl>
          <p class="piece-draw small quiet">{draw}</p>
        </li>
      ))}
    </ol>
  );
}
