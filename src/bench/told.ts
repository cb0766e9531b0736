/** What came of opening or saving: a sentence or two, and each file that was left out with its reason. */
export interface Told {
  readonly sentences: readonly string[];
  readonly left: readonly { readonly path: string; readonly why: string }[];
}
