import type { JudgedClaim } from '../curriculum/index.ts';

/** A head with more claims than this is read by nobody. ASM. */
const MOST_IN_HEAD = 8;

/** Claims for a head: of each framework one, then a second, those practised first. */
export function pickClaims(offered: readonly JudgedClaim[]): readonly JudgedClaim[] {
  const rounds = new Map<string, number>();
  const ranked = offered.map((claim) => {
    const framework = claim.framework?.id ?? '';
    const round = rounds.get(framework) ?? 0;
    rounds.set(framework, round + 1);
    return { claim, round };
  });
  return ranked
    .toSorted((a, b) => a.round - b.round)
    .slice(0, MOST_IN_HEAD)
    .map(({ claim }) => claim);
}
