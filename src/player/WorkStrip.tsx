import type { StripPart, StripView } from './beside-view.ts';
import { WorkPatterns } from './WorkPatterns.tsx';

/** The work of one axe as a strip, told or empty to be filled in by hand: `WorkStrip.astro` in a pack. */
export function WorkStrip({
  id,
  title,
  lead,
  parts,
  marks,
  fine,
  scale,
  lines,
  times,
}: StripView & { readonly id: string }) {
  const isBlank = parts.length === 0;
  // On paper it stands straight under its sheet.
  const Heading = isBlank ? 'h3' : 'h4';
  const fill = (pattern: string): string => `url(#${id}-${pattern})`;
  const stretch = (y: number) => (part: StripPart) => (
    <rect
      key={part.x}
      class="work-part"
      x={part.x}
      y={y}
      width={part.width}
      height="40"
      fill={fill(part.pattern)}
    />
  );
  return (
    <section class="work-strip" data-state={isBlank ? 'blank' : 'told'}>
      <Heading class="work-title">{title}</Heading>
      <p>{lead}</p>
      <svg width="100%" height={fine === null ? 84 : 150} aria-hidden="true">
        <WorkPatterns id={id} />
        {parts.map(stretch(4))}
        <rect class="work-frame" x="0" y="4" width="100%" height="40" />
        {marks.map(({ x, text, anchor }) => (
          <g key={x}>
            <line class="line-mark" x1={x} x2={x} y1="44" y2="52" />
            <text class="line-number" x={x} y="68" text-anchor={anchor}>
              {text}
            </text>
          </g>
        ))}
        {fine !== null && (
          <>
            <line class="work-ray" x1="0" x2="0" y1="44" y2="100" />
            <line class="work-ray" x1={fine.end} x2="60%" y1="44" y2="100" />
            {fine.parts.map(stretch(100))}
            <rect class="work-frame" x="0" y="100" width="60%" height="40" />
          </>
        )}
      </svg>
      <p class="small quiet">{scale}</p>
      {lines.length > 0 && (
        <ul class="work-list numbers">
          {lines.map(({ pattern, text }) => (
            <li key={text}>
              <svg class="work-key" width="22" height="22" aria-hidden="true">
                <rect class="work-part" x="1" y="1" width="20" height="20" fill={fill(pattern)} />
              </svg>
              <span>{text}</span>
            </li>
          ))}
        </ul>
      )}
      {times !== null && (
        <p>
          <strong>{times}</strong>
        </p>
      )}
    </section>
  );
}
