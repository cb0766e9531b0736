import { MOST_FILE_BYTES } from '../../../shared/photo/index.ts';
import type { PictureAnswer, PictureAsk, PictureRead } from './picture-taken.ts';

/** Makes pictures ready, beside the page. */
export interface PictureTaker {
  readonly take: (file: Blob) => Promise<PictureRead>;
}

/** The worker begins with the first picture: most visits have none. */
export function createPictureTaker(): PictureTaker {
  let worker: Worker | null = null;
  let number = 0;
  const waiting = new Map<number, (read: PictureRead) => void>();
  const answer = (of: number, read: PictureRead): void => {
    waiting.get(of)?.(read);
    waiting.delete(of);
  };
  const begin = (): Worker => {
    const made = new Worker(new URL('./picture-worker.ts', import.meta.url), { type: 'module' });
    made.addEventListener('message', ({ data }: MessageEvent<PictureAnswer>) => {
      answer(data.number, data);
    });
    // A worker that fell over (no room, as a rule) answers nothing more; the next picture gets a new one.
    made.addEventListener('error', () => {
      worker?.terminate();
      worker = null;
      for (const of of waiting.keys()) answer(of, { taken: null, refusal: 'cannot-open' });
    });
    return made;
  };
  return {
    take: (file) => {
      if (file.size > MOST_FILE_BYTES) return Promise.resolve({ taken: null, refusal: 'too-large' });
      worker ??= begin();
      number += 1;
      const ask: PictureAsk = { number, file };
      return new Promise((done) => {
        waiting.set(number, done);
        // A worker is no window: it has no origin to name.
        // oxlint-disable-next-line unicorn/require-post-message-target-origin
        worker?.postMessage(ask);
      });
    },
  };
}
