/** A value, or none with the reason why there is none. Never NaN. */
export type Answer<Value, Why extends string> =
  { readonly value: Value } | { readonly value: null; readonly why: Why };
