import type { TalkAfter } from '../../shared/telling/barter-talk.ts';

/** What to talk about, and the rules with their sources: `BarterTalk.astro` in a pack. */
export function BarterTalk({ title, lead, prompts, rulesTitle, rules }: TalkAfter) {
  return (
    <section class="barter-talk">
      <h3>{title}</h3>
      <p>{lead}</p>
      <ul>
        {prompts.map((prompt) => (
          <li key={prompt}>{prompt}</li>
        ))}
      </ul>
      <details class="signs working">
        <summary>{rulesTitle}</summary>
        <dl>
          {rules.map(({ rule, source }) => (
            <div key={rule}>
              <dt>{rule}</dt>
              <dd>{source}</dd>
            </div>
          ))}
        </dl>
      </details>
    </section>
  );
}
