import { useEffect, useRef, useState } from 'preact/hooks';
import type { DayEdit } from '../../shared/day/index.ts';
import type { ReaderAsk, ReaderReply } from '../workers/day-messages.ts';

/** A file with the changes that are on their way into it. */
export interface DayText {
  readonly text: string;
  readonly waiting: readonly DayEdit[];
}

/** What a worker read from the file that is open, and a way to have it changed. */
export interface DayReader {
  /** Null until the first text has been read. */
  readonly read: ReaderReply | null;
  /** @param then Called once with what was read after the change. */
  readonly change: (edits: readonly DayEdit[], then?: (reply: ReaderReply) => void) => void;
}

/** Time after the last key before the file is read again, in milliseconds. */
const REST_MS = 150;

const NONE: readonly DayEdit[] = [];

/**
 * Reads a day file beside the page as it is written. A change is handed to `onKeep` at once, as one that waits, and again
 * with the whole text once it is in: whoever leaves the page meanwhile finds it done on coming back.
 *
 * @param kept Null where no day is open.
 */
export function useDayReader(
  file: string,
  kept: DayText | null,
  rulesAt: string,
  onKeep: (next: Partial<DayText>) => void,
): DayReader {
  const [read, setRead] = useState<ReaderReply | null>(null);
  const worker = useRef<Worker | null>(null);
  const turn = useRef(0);
  const latest = useRef({ file, kept, onKeep });
  latest.current = { file, kept, onKeep };
  const sent = useRef<DayText | null>(null);
  const after = useRef<((reply: ReaderReply) => void) | null>(null);

  const keep = (next: Partial<DayText>): void => {
    const { current } = latest;
    if (current.kept !== null) latest.current = { ...current, kept: { ...current.kept, ...next } };
    current.onKeep(next);
  };
  const ask: DayReader['change'] = (edits, then): void => {
    const { kept: now, file: name } = latest.current;
    if (now === null) return;
    const waiting = edits.length === 0 ? now.waiting : [...now.waiting, ...edits];
    if (edits.length > 0) keep({ waiting });
    if (worker.current === null) {
      worker.current = new Worker(new URL('../workers/day-reader.ts', import.meta.url), { type: 'module' });
      worker.current.addEventListener('message', ({ data }: MessageEvent<ReaderReply>) => hear(data));
    }
    if (then !== undefined) after.current = then;
    turn.current += 1;
    sent.current = { text: now.text, waiting };
    const message: ReaderAsk = { turn: turn.current, file: name, text: now.text, edits: waiting, rulesAt };
    worker.current.postMessage(message);
  };
  const hear = (data: ReaderReply): void => {
    const { kept: now } = latest.current;
    if (data.turn !== turn.current || now === null) return;
    const asked = sent.current;
    sent.current = null;
    // The text was written in meanwhile, or another day is open: it is asked again after a rest, with all that waits.
    if (asked === null || asked.text !== now.text) return;
    setRead(data);
    if (asked.waiting.length > 0 || data.text !== now.text) keep({ text: data.text, waiting: NONE });
    const next = after.current;
    after.current = null;
    next?.(data);
  };

  const text = kept?.text ?? null;
  const waiting = kept?.waiting ?? NONE;
  useEffect(() => {
    if (text === null) return setRead(null);
    const isAsked = sent.current?.text === text && sent.current.waiting === waiting;
    if (isAsked || (read?.text === text && waiting.length === 0)) return undefined;
    const rest = setTimeout(() => ask([]), read === null ? 0 : REST_MS);
    return () => clearTimeout(rest);
  }, [text, waiting, read]);
  return { read: text === null ? null : read, change: ask };
}
