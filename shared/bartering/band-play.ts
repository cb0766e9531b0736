import type { Band } from '../library/bands.ts';

/** How a gathering is played by one band. All judgements of ours, none tried with children. */
export interface BandPlay {
  /** The most things one side of a swap may be. */
  readonly bundle: 1 | 2;
  /** Wants lie open, or are found by asking. */
  readonly wants: 'shown' | 'asked';
  readonly traders: { readonly least: number; readonly most: number };
  /** The fewest handovers to the aim. */
  readonly par: { readonly least: number; readonly most: number };
  readonly hasGifts: boolean;
  /** Whether a dead end may be entered by what cannot be taken back. */
  readonly mayStrand: boolean;
}

/** Status of every row: ASM. */
export const BAND_PLAY: { readonly [B in Band]: BandPlay } = {
  '4-5': {
    bundle: 1,
    wants: 'shown',
    traders: { least: 2, most: 3 },
    par: { least: 2, most: 2 },
    hasGifts: false,
    mayStrand: false,
  },
  '5-7': {
    bundle: 1,
    wants: 'shown',
    traders: { least: 3, most: 4 },
    par: { least: 2, most: 3 },
    hasGifts: false,
    mayStrand: false,
  },
  '7-9': {
    bundle: 1,
    wants: 'asked',
    traders: { least: 3, most: 6 },
    par: { least: 2, most: 4 },
    hasGifts: false,
    mayStrand: false,
  },
  '9-11': {
    bundle: 2,
    wants: 'asked',
    traders: { least: 4, most: 6 },
    par: { least: 2, most: 5 },
    hasGifts: false,
    mayStrand: false,
  },
  '11-14': {
    bundle: 2,
    wants: 'asked',
    traders: { least: 4, most: 8 },
    par: { least: 3, most: 6 },
    hasGifts: true,
    mayStrand: true,
  },
  '14-16': {
    bundle: 2,
    wants: 'asked',
    traders: { least: 4, most: 8 },
    par: { least: 3, most: 6 },
    hasGifts: true,
    mayStrand: true,
  },
};

/** Aimless play may get this at most, on average; above, a world is too easy to be worth scoring. ASM. */
export const MOST_AIMLESS = 0.75;
