import type { RefObject } from 'preact';

/** Puts the focus on something of an island once its new state is drawn: in the frame after the next. */
export function focusNext(root: RefObject<HTMLElement>, selector: string): void {
  requestAnimationFrame(() =>
    requestAnimationFrame(() => root.current?.querySelector<HTMLElement>(selector)?.focus()),
  );
}
