import type { PictureAnswer, PictureAsk } from './picture-taken.ts';
import { shrinkPicture } from './shrink-picture.ts';

// A picture of fifty million points takes a second or more to open and draw: the page does not wait for it.
const say = (answer: PictureAnswer): void => {
  postMessage(answer);
};

addEventListener('message', ({ data: { number, file } }: MessageEvent<PictureAsk>) => {
  shrinkPicture(file).then(
    (read) => {
      say({ number, ...read });
    },
    () => {
      // No room for it, or a file that is gone from its stick.
      say({ number, taken: null, refusal: 'cannot-open' });
    },
  );
});
