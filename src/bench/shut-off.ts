/**
 * What a frame of the Bench may do that shows a lesson: run its own script, and print, which a browser counts among
 * dialogs. It has no origin: no storage, no request, no link out, no window, no form, nothing of the page around it.
 *
 * No words of a lesson become script, and the policies of frame and page let no other script run than the product's own
 * (`tests/site/hostile.spec.ts`). Were one to run all the same, dialogs would let it stop the page with an alert, ask for
 * words in a prompt that names this site, hold up leaving the frame, or print. What is typed there it could keep from no
 * one but could send to no one either. The work is kept within a second, so it outlives even a page that must be shut.
 */
export const MAY = 'allow-scripts allow-modals';
