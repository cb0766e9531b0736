/** One of two traders of two goods: the share of their wealth they want in good 1, and what they bring. */
export interface ShareTrader {
  /** From 0 to 1. */
  readonly share1: number;
  readonly endowment: readonly [number, number];
}

/** Where two such traders settle; or why there is no such place. */
export type Settlement =
  | {
      readonly priceRatio: number;
      readonly A: readonly [number, number];
      readonly B: readonly [number, number];
    }
  | { readonly priceRatio: null; readonly why: 'no-price' | 'price-zero' };

/**
 * The rate at which two traders with fixed shares (Cobb-Douglas) both get what they want: good 1 in terms of good 2,
 * (aA*A2 + aB*B2) / ((1 - aA)*A1 + (1 - aB)*B1). A model for the oldest and for teachers: no such rate is recorded.
 *
 * @throws RangeError for a share outside 0 to 1, or an endowment below 0.
 * @example cobbDouglasExchange({ A: { share1: 0.5, endowment: [4, 0] }, B: { share1: 0.5, endowment: [0, 4] } }).priceRatio // 1
 */
export function cobbDouglasExchange({
  A,
  B,
}: {
  readonly A: ShareTrader;
  readonly B: ShareTrader;
}): Settlement {
  for (const { share1, endowment } of [A, B]) {
    if (!(share1 >= 0 && share1 <= 1))
      throw new RangeError(`a share must be from 0 to 1, received ${share1}`);
    if (!endowment.every((amount) => amount >= 0 && Number.isFinite(amount))) {
      throw new RangeError(`an endowment must be from 0 up, received ${endowment.join(', ')}`);
    }
  }
  const wantedFor1 = A.share1 * A.endowment[1] + B.share1 * B.endowment[1];
  const wantedFor2 = (1 - A.share1) * A.endowment[0] + (1 - B.share1) * B.endowment[0];
  if (wantedFor2 === 0) return { priceRatio: null, why: 'no-price' };
  const priceRatio = wantedFor1 / wantedFor2;
  if (priceRatio === 0) return { priceRatio: null, why: 'price-zero' };
  const share = ({ share1, endowment }: ShareTrader): readonly [number, number] => {
    const wealth = priceRatio * endowment[0] + endowment[1];
    return [(share1 * wealth) / priceRatio, (1 - share1) * wealth];
  };
  return { priceRatio, A: share(A), B: share(B) };
}
