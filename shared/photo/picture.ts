/** What a picture's file may tell beside the picture. */
export type Carried = 'place' | 'device' | 'time' | 'other words';

/** A picture as it lies in its file: sides in picture points, and the same picture with nothing said of place, device or time. */
export interface Picture {
  readonly type: 'image/jpeg' | 'image/png' | 'image/webp';
  readonly widthPx: number;
  readonly heightPx: number;
  /** True where the file says that it must be turned or mirrored to stand upright: the mark is lost with the rest. */
  readonly isTurned: boolean;
  readonly carries: readonly Carried[];
  /** The file without what it carries; the picture itself is byte for byte the same. */
  readonly stripped: Uint8Array;
}

/** Joins pieces of a file. */
export function join(pieces: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(pieces.reduce((length, piece) => length + piece.length, 0));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}

/** Bytes as the letters they stand for, for marks of four letters and the like. */
export const letters = (bytes: Uint8Array, from: number, length: number): string =>
  String.fromCharCode(...bytes.subarray(from, from + length));

/** A reader of whole numbers; past the end of the file they are 0. */
export const numbersOf = (bytes: Uint8Array): { readonly u16: Reader; readonly u32: Reader } => {
  const at = (place: number): number => bytes[place] ?? 0;
  const u16: Reader = (place, isLittle = false) =>
    isLittle ? at(place) + at(place + 1) * 0x100 : at(place) * 0x100 + at(place + 1);
  return {
    u16,
    u32: (place, isLittle = false) =>
      isLittle ? u16(place, true) + u16(place + 2, true) * 0x1_0000 : u16(place) * 0x1_0000 + u16(place + 2),
  };
};

type Reader = (place: number, isLittle?: boolean) => number;
