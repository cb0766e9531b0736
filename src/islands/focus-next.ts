import type { RefObject } from 'preact';

/** Frames to wait for what is drawn late: half a second on a device that keeps up. ASM. */
const MOST_FRAMES = 30;

/**
 * Puts the focus on something of an island once its new state is drawn. Stores have islands drawn by a timer, which a
 * frame may come before; a timer begun after theirs runs after theirs. What is not there then is waited for.
 *
 * @param selectors The first of these that is there; the later ones are for where the first cannot be.
 * @param isStill True where nothing may scroll.
 * @example focusNext(root, ['[data-record]'])
 */
export function focusNext(
  root: RefObject<HTMLElement>,
  selectors: readonly string[],
  isStill: boolean = false,
): void {
  const seek = (framesLeft: number): void => {
    for (const selector of selectors) {
      const found = root.current?.querySelector<HTMLElement | SVGElement>(selector);
      if (!found) continue;
      found.focus({ preventScroll: isStill });
      return;
    }
    if (framesLeft > 0) requestAnimationFrame(() => seek(framesLeft - 1));
  };
  setTimeout(() => seek(MOST_FRAMES));
}
