import type { RefObject } from 'preact';

/** Frames to wait for what is to be drawn: half a second on a device that keeps up. ASM. */
const MOST_FRAMES = 30;

/** Puts the focus on something of an island once its new state is drawn: in the frame after the next, or when it is there. */
export function focusNext(root: RefObject<HTMLElement>, selector: string): void {
  const seek = (framesLeft: number): void => {
    const found = root.current?.querySelector<HTMLElement>(selector);
    if (found) found.focus();
    else if (framesLeft > 0) requestAnimationFrame(() => seek(framesLeft - 1));
  };
  requestAnimationFrame(() => requestAnimationFrame(() => seek(MOST_FRAMES)));
}
