import { drawingId } from './drawing-id.ts';

interface Props {
  readonly find: string;
  readonly className?: string;
}

/** A find's drawing, taken from the one drawn in the page; the words stand beside it, so it is hidden from readers. */
export function Drawing({ find, className = 'drawing' }: Props) {
  return (
    <svg class={className} aria-hidden="true" focusable="false">
      <use href={`#${drawingId(find)}`} />
    </svg>
  );
}
