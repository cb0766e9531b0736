interface Props {
  readonly label: string;
  readonly take: (file: File) => void;
}

/** A press that asks for one picture. */
export function OnePicture({ label, take }: Props) {
  return (
    <label class="press small file-choice">
      {label}
      <input
        type="file"
        accept="image/*"
        class="unseen"
        onChange={({ currentTarget }) => {
          const file = currentTarget.files?.[0];
          currentTarget.value = '';
          if (file !== undefined) take(file);
        }}
      />
    </label>
  );
}
