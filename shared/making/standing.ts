/** How a figure is known, the surest first; the library's marks, without the one for invented things. */
export const STANDINGS = ['RF', 'DER', 'CP', 'FM', 'ASM'] as const;
export type Standing = (typeof STANDINGS)[number];

/**
 * What a result may claim: no more than the least sure figure it stands on. That of nothing is RF.
 *
 * @example weakest(['RF', 'ASM', 'DER']) // 'ASM'
 */
export function weakest(standings: readonly Standing[]): Standing {
  return standings.reduce<Standing>(
    (worst, next) => (STANDINGS.indexOf(next) > STANDINGS.indexOf(worst) ? next : worst),
    'RF',
  );
}
