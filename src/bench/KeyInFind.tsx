import { useState } from 'preact/hooks';
import { benchFinds as words } from '../../shared/words/en/bench-finds.ts';
import { findsInWords } from '../../shared/words/en/finds-in.ts';

interface Props {
  /** A row of the list, and the names its columns have. */
  readonly add: (line: string, header: string) => void;
}

const KEYED = [
  'pit',
  'small-find',
  'context',
  'object-type',
  'material',
  'length-mm',
  'width-mm',
  'thickness-mm',
  'note',
] as const;

const cell = (text: string): string => (/[",\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

/** A find keyed in by hand becomes a row of the list, in columns of our own names. */
export function KeyInFind({ add }: Props) {
  const [values, setValues] = useState<Readonly<Record<string, string>>>({});
  return (
    <details>
      <summary>{words.keyIn}</summary>
      <form
        class="key-in"
        onSubmit={(event) => {
          event.preventDefault();
          const line = KEYED.map((field) => cell(values[field]?.trim() ?? '')).join(',');
          add(line, KEYED.map((field) => field.replace(/-(?=mm$)/, ' ').replaceAll('-', ' ')).join(','));
          setValues({ pit: values['pit'] ?? '', context: values['context'] ?? '' });
        }}
      >
        {KEYED.map((field) => (
          <label key={field}>
            {findsInWords.fieldName(field)}
            <input
              type="text"
              class="form-value"
              autocomplete="off"
              value={values[field] ?? ''}
              onInput={({ currentTarget }) => {
                setValues({ ...values, [field]: currentTarget.value });
              }}
            />
          </label>
        ))}
        <button type="submit" class="press">
          {words.keyAdd}
        </button>
      </form>
    </details>
  );
}
