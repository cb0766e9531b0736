import { say } from '../../shared/words/index.ts';
import type { TalkProps } from './talk-view.ts';

/** What is argued, each voice with where it comes from. */
export function TalkVoices({ words, voices }: Pick<TalkProps, 'words' | 'voices'>) {
  return (
    <section>
      <h3>{say(words.voicesTitle)}</h3>
      <ul class="talk-voices">
        {voices.map(({ who, says, from }) => (
          <li key={says}>
            <p>
              <strong>{who}</strong> {says}
            </p>
            <p class="small quiet">{from}</p>
          </li>
        ))}
      </ul>
    </section>
  );
}
