import { useEffect, useRef, useState } from 'preact/hooks';
import { benchPapers as words } from '../../shared/words/en/bench-papers.ts';
import type { PrintAnswer, PrintAsk } from '../printing/print-view.ts';
import { MAY } from './shut-off.ts';

interface Props {
  /** Where the page of the papers is served. */
  readonly address: string;
  readonly ask: PrintAsk;
  readonly isSeen: boolean;
  readonly answered: (answer: PrintAnswer) => void;
  readonly failed: (because: string) => void;
}

const isAnswer = (data: unknown): data is PrintAnswer =>
  typeof data === 'object' && data !== null && 'answer' in data && 'number' in data;

/** The papers in a frame that is shut off from this page: looked at, or out of sight and only printed or counted. */
export function PapersFrame({ address, ask, isSeen, answered, failed }: Props) {
  const frame = useRef<HTMLIFrameElement>(null);
  const [html, setHtml] = useState<string | null>(null);
  const isLoaded = useRef(false);
  const tell = (): void => {
    // The frame has no origin of its own to be named: it runs shut off.
    if (isLoaded.current) frame.current?.contentWindow?.postMessage(ask, '*');
  };
  useEffect(tell, [ask]);
  useEffect(() => {
    const hear = ({ source, data }: MessageEvent<unknown>): void => {
      if (source === frame.current?.contentWindow && isAnswer(data)) answered(data);
    };
    addEventListener('message', hear);
    return () => removeEventListener('message', hear);
  }, [answered]);
  // Fetched here and not by the frame: a frame that is shut off has no share in the copy kept for no signal.
  useEffect(() => {
    fetch(address)
      .then((response) => {
        if (!response.ok) throw new Error(`${address}: ${response.status}`);
        return response.text();
      })
      .then(setHtml)
      .catch((error: unknown) => failed(error instanceof Error ? error.message : String(error)));
  }, [address]);
  if (html === null) return null;
  return (
    <iframe
      ref={frame}
      class="papers-seen"
      title={words.frame}
      sandbox={MAY}
      srcdoc={html}
      data-state={isSeen ? 'seen' : 'away'}
      inert={!isSeen}
      aria-hidden={!isSeen}
      onLoad={() => {
        isLoaded.current = true;
        tell();
      }}
    />
  );
}
