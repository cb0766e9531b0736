import { useEffect, useRef, useState } from 'preact/hooks';
import { bench as words } from '../../shared/words/en/bench.ts';
import { packFeet } from '../packs/pack-page.ts';
import type { LessonTold } from '../player/lesson-view.ts';
import type { PackPart } from './protocol.ts';
import { MAY } from './shut-off.ts';

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
    const feet = packFeet(page.title, page.lesson);
    // The frame has no origin of its own to be named: it runs shut off.
    frame.current?.contentWindow?.postMessage({ lesson: page.lesson, feet } satisfies LessonTold, '*');
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
          sandbox={MAY}
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
