import { base64, readPicture } from '../../../shared/photo/index.ts';

/** A picture as it can be shown, with its sides in picture points. */
export interface PictureShown {
  readonly address: string;
  readonly widthPx: number;
  readonly heightPx: number;
}

// Writing a picture out as text takes some milliseconds, and its bytes never change.
const shown = new WeakMap<Uint8Array, PictureShown | null>();

/** A picture's bytes as a `data:` address, as a lesson carries it; null where they are no picture. */
export function pictureShown(bytes: Uint8Array): PictureShown | null {
  const before = shown.get(bytes);
  if (before !== undefined) return before;
  const { picture } = readPicture(bytes);
  const made =
    picture === null
      ? null
      : {
          address: `data:${picture.type};base64,${base64(picture.stripped)}`,
          widthPx: picture.widthPx,
          heightPx: picture.heightPx,
        };
  shown.set(bytes, made);
  return made;
}
