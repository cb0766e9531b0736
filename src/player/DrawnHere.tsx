import type { Drawn } from './drawn.ts';

/** A drawing of the pack, pointed to; the words beside it say what it is, so it is hidden from readers. */
export function DrawnHere({
  id,
  width,
  height,
  className = 'paper-drawing',
}: Drawn & { readonly className?: string }) {
  return (
    <svg class={className} viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
      <use href={`#${id}`} width={width} height={height} />
    </svg>
  );
}
