import type { Picture } from './lesson-view.ts';

/** A drawing that stands in one place only; the words beside it say what it is, so it is hidden from readers. */
export function Shown({
  viewBox,
  markup,
  className = 'paper-drawing',
}: Picture & { readonly className?: string }) {
  return (
    <svg
      class={className}
      viewBox={viewBox}
      aria-hidden="true"
      dangerouslySetInnerHTML={{ __html: markup }}
    />
  );
}
