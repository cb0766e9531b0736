import { useEffect, useRef } from 'preact/hooks';
import { benchCarry as words } from '../../shared/words/en/bench-carry.ts';
import { say } from '../../shared/words/index.ts';
import type { Told } from './told.ts';

interface Props {
  /** Null where there is nothing to tell. */
  readonly told: Told | null;
  readonly close: () => void;
}

const MOST_SHOWN = 20;

/** What came of opening or saving a file, until it is put away. */
export function ToldLine({ told, close }: Props) {
  const line = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (told !== null) line.current?.scrollIntoView({ block: 'nearest' });
  }, [told]);
  const left = told?.left ?? [];
  return (
    <div ref={line} class={told === null ? undefined : 'told'}>
      <div role="status">
        {(told?.sentences ?? []).map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
        {left.length > 0 && (
          <p>
            <strong>{say(words.leftTitle, { count: left.length })}</strong>
          </p>
        )}
      </div>
      {left.length > 0 && (
        <ul class="told-left small">
          {left.slice(0, MOST_SHOWN).map(({ path, why }) => (
            <li key={path}>
              <strong>{path}</strong> {why}
            </li>
          ))}
          {left.length > MOST_SHOWN && <li>{say(words.leftMore, { count: left.length - MOST_SHOWN })}</li>}
        </ul>
      )}
      {told !== null && (
        <button type="button" class="form-out small" onClick={close}>
          {words.close}
        </button>
      )}
    </div>
  );
}
