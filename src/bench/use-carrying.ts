import { useState } from 'preact/hooks';
import { benchCarry as words } from '../../shared/words/en/bench-carry.ts';
import { say } from '../../shared/words/index.ts';
import type { BenchStore, OpenVisit } from '../stores/bench.ts';
import type { Carrying } from './carrying.ts';
import type { Told } from './told.ts';

/** Visits in and out of the Bench as files, and what is to be said of it. */
export interface Carried {
  /** Null where there is nothing to tell. */
  readonly told: Told | null;
  readonly close: () => void;
  readonly open: (files: readonly File[]) => void;
  readonly saveVisit: (visit: OpenVisit) => void;
  readonly saveShelf: () => void;
}

/** What reads and writes files is fetched when it is first asked for: most who open the Bench never do. */
export function useCarrying(bench: BenchStore): Carried {
  const [told, setTold] = useState<Told | null>(null);
  const carry = (act: (carrying: Carrying) => Promise<void>): void => {
    import('./carrying.ts')
      .then(({ createCarrying }) => act(createCarrying(bench, setTold)))
      .catch((error: unknown) => {
        const because = error instanceof Error ? error.message : String(error);
        setTold({ sentences: [say(words.failed, { because })], left: [] });
      });
  };
  return {
    told,
    close: () => {
      setTold(null);
    },
    open: (files) => {
      if (files.length > 0) carry(({ open }) => open(files));
    },
    saveVisit: (visit) => {
      carry(({ saveVisit }) => saveVisit(visit));
    },
    saveShelf: () => {
      carry(({ saveShelf }) => saveShelf());
    },
  };
}
