import type { Blocks } from './paper-view.ts';

/** A question with room beneath it to write. */
export function Room({ text }: Blocks['room']) {
  return <p class="sheet-why">{text}</p>;
}

/** The numbers of finds, to be written where they belong. */
export function Numbers({ numbers }: Blocks['numbers']) {
  return (
    <p class="sheet-numbers numbers">
      {numbers.map((number) => (
        <span key={number}>
          <span class="triangle">△</span>&nbsp;{number}
        </span>
      ))}
    </p>
  );
}

export function Trays({ trays }: Blocks['trays']) {
  return (
    <ul class="sheet-trays">
      {trays.map(({ name, hint }) => (
        <li key={name} class="sheet-tray">
          <strong>{name}</strong>
          <span class="quiet">{hint}</span>
        </li>
      ))}
    </ul>
  );
}

/** Each with a box to tick. */
export function Ticks({ words }: Blocks['ticks']) {
  return (
    <ul class="tick-list">
      {words.map((each) => (
        <li key={each}>{each}</li>
      ))}
    </ul>
  );
}

/** Answers to put a ring round. */
export function Choices({ words }: Blocks['choices']) {
  return (
    <ul class="paper-choices">
      {words.map((each) => (
        <li key={each}>{each}</li>
      ))}
    </ul>
  );
}

/** A line with a place for each step, first to last. */
export function Places({ count, isDrawn, ends: [first, last] }: Blocks['places']) {
  return (
    <ol class="paper-line" data-drawn={isDrawn}>
      {Array.from({ length: count }, (_, index) => (
        <li key={index}>
          <span class="numbers">{index + 1}</span>
          <span class="quiet">{index === 0 ? first : index === count - 1 ? last : ''}</span>
        </li>
      ))}
    </ol>
  );
}

const BASE = 44;

/** A line on which equal steps multiply, to be marked: `PaperLine.astro` in a pack. */
export function Scale({ marks }: Blocks['scale']) {
  return (
    <svg class="estimate-line" width="100%" height={BASE + 34} aria-hidden="true">
      <line class="line-rule" x1="0" x2="100%" y1={BASE} y2={BASE} />
      {marks.map(({ x, text, anchor }) => {
        const half = text === null ? 5 : 9;
        return (
          <g key={x}>
            <line class="line-mark" x1={x} x2={x} y1={BASE - half} y2={BASE + half} />
            {text !== null && (
              <text class="line-number" x={x} y={BASE + 28} text-anchor={anchor}>
                {text}
              </text>
            )}
          </g>
        );
      })}
    </svg>
  );
}
