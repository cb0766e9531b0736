import { useEffect, useRef, useState } from 'preact/hooks';
import type { DayEdit } from '../../shared/day/index.ts';
import type { ReaderAsk, ReaderReply } from '../workers/day-messages.ts';

/** What a worker read from the file that is open, and a way to have it changed. */
export interface DayReader {
  /** Null until the first text has been read. */
  readonly read: ReaderReply | null;
  /** @param then Called once with what was read after the change. */
  readonly change: (edits: readonly DayEdit[], then?: (reply: ReaderReply) => void) => void;
}

/** Time after the last key before the file is read again, in milliseconds. */
const REST_MS = 150;

/** Reads a day file beside the page as it is written. Edits come back by `onText` with the whole text. */
export function useDayReader(
  file: string,
  text: string | null,
  rulesAt: string,
  onText: (text: string) => void,
): DayReader {
  const [read, setRead] = useState<ReaderReply | null>(null);
  const worker = useRef<Worker | null>(null);
  const turn = useRef(0);
  const latest = useRef({ text, onText });
  latest.current = { text, onText };

  const after = useRef<((reply: ReaderReply) => void) | null>(null);
  const ask: DayReader['change'] = (edits, then): void => {
    if (latest.current.text === null) return;
    if (worker.current === null) {
      worker.current = new Worker(new URL('../workers/day-reader.ts', import.meta.url), { type: 'module' });
      worker.current.addEventListener('message', ({ data }: MessageEvent<ReaderReply>) => {
        if (data.turn !== turn.current) return;
        setRead(data);
        if (data.text !== latest.current.text) latest.current.onText(data.text);
        const next = after.current;
        after.current = null;
        next?.(data);
      });
    }
    if (then !== undefined) after.current = then;
    turn.current += 1;
    const message: ReaderAsk = { turn: turn.current, file, text: latest.current.text, edits, rulesAt };
    worker.current.postMessage(message);
  };

  useEffect(() => {
    if (text === null) return setRead(null);
    if (read?.text === text) return undefined;
    const rest = setTimeout(() => ask([]), read === null ? 0 : REST_MS);
    return () => clearTimeout(rest);
  }, [text, read]);
  return { read: text === null ? null : read, change: ask };
}
