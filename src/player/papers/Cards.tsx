import type { ComponentType } from 'preact';
import { DrawnHere } from '../DrawnHere.tsx';
import type { Blocks, CardView, ThingsView, ThingView } from './paper-view.ts';

type CardOf<Name extends CardView['card']> = Extract<CardView, { readonly card: Name }>;

/** Cards to cut out along their edges. */
export function Cards({ cards }: Blocks['cards']) {
  return (
    <ul class="cards">
      {cards.map((card, index) => {
        // The table pairs each name with its own component; the type cannot follow a pair through a union.
        const Card = shown[card.card] as ComponentType<CardView>;
        return <Card key={index} {...card} />;
      })}
    </ul>
  );
}

function FindCard({ drawn, plain, size, number }: CardOf<'find'>) {
  return (
    <li class="card">
      <DrawnHere {...drawn} />
      <div class="card-label">
        <p class="card-plain">{plain}</p>
        <p class="numbers small">{size}</p>
        <p class="card-number numbers">
          <span class="triangle">△</span>&nbsp;{number}
        </p>
      </div>
    </li>
  );
}

function StepCard({ drawn, name, letter }: CardOf<'step'>) {
  return (
    <li class="card step-paper" data-drawn={drawn !== null}>
      {drawn !== null && <DrawnHere {...drawn} />}
      <p class="card-plain">{name}</p>
      <p class="step-letter">{letter}</p>
    </li>
  );
}

function TraderCard({ name, has, wants, notes }: CardOf<'trader'>) {
  return (
    <li class="card trader-card">
      <p class="card-plain">{name}</p>
      <Things {...has} className="things" />
      <Things {...wants} className="wants" />
      {notes.map((note) => (
        <p key={note} class="small">
          {note}
        </p>
      ))}
    </li>
  );
}

function WantCard({ number, has, wants }: CardOf<'want'>) {
  return (
    <li class="card want-card">
      <p class="want-number numbers">{number}</p>
      <div>
        <Things {...has} className="card-plain" />
        <Things {...wants} className="want-list" />
      </div>
    </li>
  );
}

function Things({ label, things, className }: ThingsView & { readonly className: string }) {
  return (
    <>
      <p class="trader-label">{label}</p>
      <ul class={className}>
        {things.map(({ rank, ...thing }, index) => (
          <li key={index}>
            {rank !== null && <span class="want-rank numbers">{rank}</span>}
            <Thing {...thing} />
          </li>
        ))}
      </ul>
    </>
  );
}

function Thing({ drawn, words, aside }: ThingView) {
  return (
    <span class="thing">
      <DrawnHere {...drawn} className="thing-drawing" />
      <span>
        {words}
        {aside !== null && <span class="thing-worth numbers"> {aside}</span>}
      </span>
    </span>
  );
}

/** Every card with what shows it: neither compiles without the other. */
const shown: { readonly [Name in CardView['card']]: ComponentType<CardOf<Name>> } = {
  find: FindCard,
  step: StepCard,
  trader: TraderCard,
  want: WantCard,
};
