/** How a figure is known, the surest first; the library's marks, without the one for invented things. */
export const STANDINGS = ['RF', 'DER', 'CP', 'FM', 'ASM'] as const;
export type Standing = (typeof STANDINGS)[number];

/**
 * What a result may claim: no more than the least sure figure it stands on. A result that stands on
 * no figure follows from what words mean (a stone that is sawn is not knapped): DER.
 *
 * @example weakest(['RF', 'ASM', 'DER']) // 'ASM'
 */
export function weakest(standings: readonly Standing[]): Standing {
  const worst = Math.max(...standings.map((standing) => STANDINGS.indexOf(standing)));
  return STANDINGS[worst] ?? 'DER';
}
