import type { Blocks } from './paper-view.ts';

const looks = {
  quiet: 'quiet',
  strong: 'notes-strong',
  small: 'small',
  question: 'sheet-question',
} as const;

export function Text({ text, look }: Blocks['text']) {
  return <p class={look === undefined ? undefined : looks[look]}>{text}</p>;
}

export function Heading({ text }: Blocks['heading']) {
  return <h3>{text}</h3>;
}

export function List({ items, isOrdered }: Blocks['list']) {
  const lines = items.map((item) => <li key={item}>{item}</li>);
  return isOrdered === true ? <ol class="notes-list">{lines}</ol> : <ul class="notes-list">{lines}</ul>;
}

export function Terms({ terms }: Blocks['terms']) {
  return (
    <dl class="notes-terms">
      {terms.map(({ term, means, older }) => (
        <div key={term}>
          <dt>{term}</dt>
          <dd>{means}</dd>
          {older !== undefined && <dd class="quiet">{older}</dd>}
        </div>
      ))}
    </dl>
  );
}

export function Voices({ voices }: Blocks['voices']) {
  return (
    <ul class="talk-voices">
      {voices.map(({ who, says }) => (
        <li key={who}>
          <strong>{who}</strong> {says}
        </li>
      ))}
    </ul>
  );
}
