import type { RefObject } from 'preact';

/** Puts the focus on something of an island once its new state is drawn: in the next frame. */
export function focusNext(root: RefObject<HTMLElement>, selector: string): void {
  requestAnimationFrame(() => root.current?.querySelector<HTMLElement>(selector)?.focus());
}
