import { benchPhotos as words } from '../../../shared/words/en/bench-photos.ts';

interface Props {
  readonly take: (files: readonly File[]) => void;
  readonly isDropped: boolean;
}

/** Two ways to a picture that every device has: its files, and its camera. */
export function TakeIn({ take, isDropped }: Props) {
  const input = (label: string, isCamera: boolean) => (
    <label class="press file-choice" data-camera={isCamera ? '' : undefined}>
      {label}
      <input
        type="file"
        accept="image/*"
        class="unseen"
        multiple={!isCamera}
        capture={isCamera ? 'environment' : undefined}
        onChange={({ currentTarget }) => {
          // The list empties itself with the field.
          const files = [...(currentTarget.files ?? [])];
          currentTarget.value = '';
          take(files);
        }}
      />
    </label>
  );
  return (
    <div class="photo-door" data-state={isDropped ? 'over' : undefined}>
      {input(words.choose, false)}
      {input(words.camera, true)}
      <span class="small quiet photo-drop-words">{words.dropHere}</span>
    </div>
  );
}
