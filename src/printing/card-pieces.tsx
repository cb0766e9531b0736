import { Cards } from '../player/papers/Cards.tsx';
import type { PrintBlocks } from './print-view.ts';

/** A sheet of cards to cut out. */
export function CardPage({ title, cards }: PrintBlocks['card-page']) {
  return (
    <section class="paper-section card-page">
      <h2 class="card-head">{title}</h2>
      <Cards cards={cards} />
    </section>
  );
}

/** What lies behind a sheet of cards when both sides are printed. */
export function CardBacks({ title, site, count, isDrawn, aside, set }: PrintBlocks['card-backs']) {
  return (
    <section class="card-backs" aria-label={`${title} ${aside}`}>
      <p class="card-head">
        {title} <span class="paper-aside">{aside}</span>
      </p>
      <ul class="cards">
        {Array.from({ length: count }, (_, index) => (
          <li key={index} class="card card-back" data-drawn={isDrawn}>
            <span>
              <strong>{title}</strong>
              <span class="small">{site}</span>
            </span>
            <span class="card-set">{set}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** A page left empty, so that each sheet of cards has its back behind it. */
export function EmptyPage({ text }: PrintBlocks['empty-page']) {
  return <p class="card-backs">{text}</p>;
}
