import { useEffect, useRef, useState } from 'preact/hooks';
import { bench as words } from '../../shared/words/en/bench.ts';
import type { PackPart } from './protocol.ts';

interface Props {
  readonly preview: string;
  readonly page: PackPart | null;
}

/** The lesson as pupils see it: a pack's own page, shut off from this one, told the lesson as it is written. */
export function PageSeen({ preview, page }: Props) {
  const frame = useRef<HTMLIFrameElement>(null);
  const told = useRef('');
  const [html, setHtml] = useState<string | null>(null);
  const lesson = page === null ? '' : JSON.stringify(page.lesson);
  const tell = (): void => {
    if (page === null || told.current === lesson) return;
    told.current = lesson;
    // The frame has no origin of its own to be named: it runs shut off.
    frame.current?.contentWindow?.postMessage(page.lesson, '*');
  };
  useEffect(tell, [lesson]);
  // Fetched here and not by the frame: a frame that is shut off has no share in the copy kept for no signal.
  useEffect(() => {
    void fetch(preview)
      .then((response) => response.text())
      .then(setHtml);
  }, [preview]);
  return (
    <>
      {page === null && <p>{words.pageNot}</p>}
      {html !== null && (
        <iframe
          ref={frame}
          class="page-seen"
          title={words.pageFrame}
          sandbox="allow-scripts"
          srcdoc={html}
          hidden={page === null}
          onLoad={() => {
            told.current = '';
            tell();
          }}
        />
      )}
    </>
  );
}
