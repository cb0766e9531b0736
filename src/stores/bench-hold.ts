/** One tab writes a visit at a time; the others look on. */
export interface Hold {
  /** True where this tab may write: false where another has the visit open. */
  readonly take: (id: string) => Promise<boolean>;
  /** Asks the other tab to keep what it has and let go; taken from it where it does not answer. */
  readonly takeOver: (id: string) => Promise<void>;
  readonly letGo: () => void;
}

const PATIENCE_MS = 1500;
const nameOf = (id: string): string => `pitlore-visit-${id}`;

/**
 * Holds visits by the browser's own locks, which a crashed tab cannot keep. Where there are none (an unsafe address),
 * every tab may write, and the last one wins.
 *
 * @param onLost Another tab has taken the visit over.
 * @param keepNow Writes what is not yet written.
 */
export function createHold(onLost: () => void, keepNow: () => Promise<void>): Hold {
  let release: (() => void) | null = null;
  let held: string | null = null;
  const locks = 'locks' in navigator ? navigator.locks : null;
  const channel = 'BroadcastChannel' in globalThis ? new BroadcastChannel('pitlore-bench') : null;

  const letGo = (): void => {
    release?.();
    release = null;
    held = null;
  };
  const request = (id: string, options: LockOptions): Promise<boolean> =>
    new Promise((answer) => {
      if (locks === null) {
        answer(true);
        return;
      }
      locks
        .request(nameOf(id), options, (lock) => {
          if (lock === null) {
            answer(false);
            return undefined;
          }
          held = id;
          answer(true);
          return new Promise<void>((done) => {
            release = done;
          });
        })
        .catch(() => {
          // Taken from us, or given up waiting.
          if (held === id) {
            release = null;
            held = null;
            onLost();
          }
          answer(false);
        });
    });

  channel?.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
    if (typeof data !== 'string' || data !== held) return;
    void keepNow().then(() => {
      letGo();
      onLost();
    });
  });

  return {
    take: (id) => {
      letGo();
      return request(id, { ifAvailable: true });
    },
    takeOver: async (id) => {
      letGo();
      // A channel is of one origin already.
      // oxlint-disable-next-line unicorn/require-post-message-target-origin
      channel?.postMessage(id);
      const isGiven = await request(id, { signal: AbortSignal.timeout(PATIENCE_MS) });
      if (!isGiven) await request(id, { steal: true });
    },
    letGo,
  };
}
