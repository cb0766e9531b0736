import { useState } from 'preact/hooks';

interface Props {
  readonly press: string;
  readonly ask: string;
  readonly yes: string;
  readonly no: string;
  readonly onYes: () => void;
}

/** A press that throws work away, and asks before it does. */
export function ClearAsk({ press, ask, yes, no, onYes }: Props) {
  const [isAsking, setAsking] = useState(false);
  if (!isAsking) {
    return (
      <button type="button" class="press" onClick={() => setAsking(true)}>
        {press}
      </button>
    );
  }
  return (
    <span class="presses-ask">
      {ask}
      <button type="button" class="press" onClick={onYes}>
        {yes}
      </button>
      <button type="button" class="press" onClick={() => setAsking(false)}>
        {no}
      </button>
    </span>
  );
}
