import { useMemo, useRef, useState } from 'preact/hooks';
import { benchPhotos as words } from '../../../shared/words/en/bench-photos.ts';
import { say } from '../../../shared/words/index.ts';
import type { PictureTaken } from './picture-taken.ts';
import { createPictureTaker } from './take-picture.ts';
import { tellRefused, tellTaken } from './tell-taken.ts';

/** A picture that is ready and not in the visit yet. */
export interface WaitingPicture {
  readonly id: number;
  readonly name: string;
  readonly about: string;
  readonly taken: PictureTaken;
}

export interface Taking {
  readonly waiting: readonly WaitingPicture[];
  /** Why files were not taken in, a sentence each. */
  readonly refused: readonly string[];
  readonly told: string;
  readonly tell: (sentence: string) => void;
  readonly take: (files: readonly File[]) => void;
  /** One picture, for what has a form already; null where it is refused. */
  readonly takeOne: (file: File) => Promise<{ readonly taken: PictureTaken; readonly about: string } | null>;
  readonly drop: (id: number) => void;
  readonly clearRefused: () => void;
}

/** The taking in of pictures, one after another: two large ones at once would be too much for a tablet. */
export function useTaking(): Taking {
  const taker = useMemo(createPictureTaker, []);
  const [waiting, setWaiting] = useState<readonly WaitingPicture[]>([]);
  const [refused, setRefused] = useState<readonly string[]>([]);
  const [told, tell] = useState('');
  const queue = useRef<Promise<unknown>>(Promise.resolve());
  const ahead = useRef(0);
  const last = useRef(0);

  const takeOne: Taking['takeOne'] = (file) => {
    ahead.current += 1;
    const read = queue.current.then(async () => {
      ahead.current -= 1;
      const looking = ahead.current === 0 ? words.takingIn : words.takingInMore;
      tell(say(looking, { name: file.name, count: ahead.current }));
      const { taken, refusal } = await taker.take(file);
      if (taken === null) {
        setRefused((before) => [...before, tellRefused(file.name, file.size, refusal)]);
        tell(say(words.notTakenIn, { name: file.name }));
        return null;
      }
      const about = tellTaken(file.size, taken);
      tell(say(words.ready, { name: file.name, about }));
      return { taken, about };
    });
    queue.current = read;
    return read;
  };
  return {
    waiting,
    refused,
    told,
    tell,
    takeOne,
    take: (files) => {
      for (const file of files)
        void takeOne(file).then((read) => {
          last.current += 1;
          const id = last.current;
          if (read !== null) setWaiting((before) => [...before, { id, name: file.name, ...read }]);
        });
    },
    drop: (id) => {
      setWaiting((before) => before.filter((each) => each.id !== id));
    },
    clearRefused: () => {
      setRefused([]);
    },
  };
}
