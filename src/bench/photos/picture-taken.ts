import type { Carried, Refusal } from '../../../shared/photo/index.ts';

/** A picture made ready for a lesson: upright, light, and silent about place, device and time. */
export interface PictureTaken {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly widthPx: number;
  readonly heightPx: number;
  /** What its file told and is left out; null where that cannot be read from a picture of its kind. */
  readonly carried: readonly Carried[] | null;
}

/** Why a picture is not taken in: what its bytes say, or what the browser makes of it. */
export type PictureRefusal = Refusal | 'too-large' | 'cannot-open' | 'too-fine';

export type PictureRead =
  | { readonly taken: PictureTaken; readonly refusal: null }
  | { readonly taken: null; readonly refusal: PictureRefusal };

export interface PictureAsk {
  /** The answer carries it. */
  readonly number: number;
  readonly file: Blob;
}

export type PictureAnswer = PictureRead & { readonly number: number };
