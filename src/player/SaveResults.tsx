import { useStore } from '@nanostores/preact';
import { useState } from 'preact/hooks';
import { say } from '../../shared/words/index.ts';
import { $plays } from '../stores/plays.ts';
import type { LessonView } from './lesson-view.ts';

/** The answers given on this device as a small file: a list of plays, as `pitlore score` takes them. */
export function SaveResults({ title, lead, save, none, saved, file }: LessonView['results']) {
  const plays = Object.values(useStore($plays));
  const [told, setTold] = useState('');
  const go = (): void => {
    if (plays.length === 0) {
      setTold(none);
      return;
    }
    const url = URL.createObjectURL(new Blob([JSON.stringify(plays, null, 2)], { type: 'application/json' }));
    const link = document.createElement('a');
    link.href = url;
    link.download = file;
    link.click();
    setTold(say(saved, { count: plays.length, file }));
  };
  return (
    <section class="pack-results not-printed">
      <h2>{title}</h2>
      <p class="small">{lead}</p>
      <button type="button" class="press" onClick={go}>
        {save}
      </button>
      <p role="status">{told}</p>
    </section>
  );
}
