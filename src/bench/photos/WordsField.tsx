interface Props {
  readonly id: string;
  readonly label: string;
  readonly hint: string;
  /** The most signs. */
  readonly most: number;
  readonly isLong?: boolean;
  readonly value: string;
  /** Why it is needed, once it has been missed. */
  readonly missing: string | null;
  /** Something to think over. */
  readonly note: string | null;
  readonly set: (value: string) => void;
}

/** Words about a picture, with what they are for; what is missing stands beneath. */
export function WordsField({ id, label, hint, most, isLong = false, value, missing, note, set }: Props) {
  const given = {
    id,
    class: 'form-value',
    maxLength: most,
    value,
    'aria-invalid': missing !== null,
    'aria-describedby': `${id}-hint ${id}-missing`,
  } as const;
  return (
    <div class="photo-field">
      <label for={id}>{label}</label>
      {isLong ? (
        <textarea
          {...given}
          rows={3}
          onInput={({ currentTarget }) => {
            set(currentTarget.value);
          }}
        />
      ) : (
        <input
          {...given}
          type="text"
          autocomplete="off"
          onInput={({ currentTarget }) => {
            set(currentTarget.value);
          }}
        />
      )}
      <p class="small quiet" id={`${id}-hint`}>
        {hint}
      </p>
      {note !== null && <p class="small photo-note">{note}</p>}
      <p class="small photo-missing" id={`${id}-missing`}>
        {missing}
      </p>
    </div>
  );
}
