import type { Band } from '../library/bands.ts';

/** A sentence with `{places}`; where a count decides its form, one for each plural rule the language has. */
export type Template =
  string | ({ readonly other: string } & Partial<Readonly<Record<Intl.LDMLPluralRule, string>>>);

/** A sentence, or one for each band that needs its own and one for the rest. */
export type Entry =
  Template | { readonly bands: Partial<Readonly<Record<Band, Template>>>; readonly otherwise: Template };

/** One part of the catalogue, resolved for a band: plain data, so that an island can be handed it. */
export type Words<Section extends Readonly<Record<string, Entry>>> = {
  readonly [Key in keyof Section]: Template;
};
