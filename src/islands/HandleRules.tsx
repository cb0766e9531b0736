import { say } from '../../shared/words/index.ts';
import type { HandleProps } from './handle-view.ts';

/** What holds at the table, before anything is touched. */
export function HandleRules({ activity, words }: Pick<HandleProps, 'activity' | 'words'>) {
  const hasEdges = activity.pieces.some(({ edge, exposure }) => edge !== 'E0' && exposure !== 'look');
  const rules = [
    words.ruleTray,
    words.ruleOne,
    ...(hasEdges ? [words.ruleEdge] : []),
    words.rulePass,
    words.ruleBroken,
    words.ruleWash,
  ];
  return (
    <section class="handle-rules" data-edges={hasEdges}>
      <h3>{say(words.rulesTitle)}</h3>
      <ul>
        {rules.map((rule) => (
          <li key={say(rule)}>{say(rule)}</li>
        ))}
      </ul>
    </section>
  );
}
