import { say, type Template } from '../../shared/words/index.ts';

interface Props {
  readonly isSame: boolean;
  readonly words: { readonly same: Template; readonly other: Template };
}

/** Whether an answer is as in the record: by shape, and by word for those who hear it. */
export function Mark({ isSame, words }: Props) {
  return (
    <span class="mark" data-mark={isSame ? 'same' : 'other'}>
      <span aria-hidden="true">{isSame ? '=' : '≠'}</span>
      <span class="unseen">{say(isSame ? words.same : words.other)}: </span>
    </span>
  );
}
