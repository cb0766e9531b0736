import { benchHelp as words, type StepId } from '../../shared/words/en/bench-help.ts';

interface Props {
  readonly done: ReadonlySet<StepId>;
}

/** A first visit, step by step; each is marked when it has been done. And the words that stand on this page. */
export function TenSteps({ done }: Props) {
  return (
    <details class="ten-steps">
      <summary>{words.title}</summary>
      <p class="prose">{words.lead}</p>
      <ol class="steps-list">
        {words.steps.map(({ id, name, how }) => (
          <li key={id} data-state={done.has(id) ? 'done' : undefined}>
            <strong>{name}</strong>
            {done.has(id) && <span class="step-done">{words.done}</span>}
            <br />
            {how}
          </li>
        ))}
      </ol>
      <h2>{words.wordsTitle}</h2>
      <dl class="steps-words">
        {words.words.map(({ word, means }) => (
          <div key={word}>
            <dt>{word}</dt>
            <dd>{means}</dd>
          </div>
        ))}
      </dl>
    </details>
  );
}
