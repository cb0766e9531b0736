import type { SiteView } from '../assemblage/index.ts';
import { say } from '../words/index.ts';
import { percentOf, pitNumber, type CompareWords } from './compare-words.ts';

/** What a whole site shows, in sentences: which three pits share most, how unevenly, which kinds keep company. */
export function siteLines(
  words: CompareWords,
  { company, pairsOfKinds, closest, uneven, trio }: SiteView,
  nameOf: (kind: string) => string,
): readonly string[] {
  const [nearest] = company;
  const ofTrio =
    trio === null
      ? []
      : [
          say(words.siteTrio, {
            pits: trio.pits.map(pitNumber).join(', '),
            kinds: trio.kinds.map(nameOf).join(', '),
            groups: trio.groups,
            percent: percentOf(trio.chance),
          }),
        ];
  const ofCompany =
    nearest === undefined
      ? []
      : [
          `${say(words.siteCompany, {
            first: nameOf(nearest.kinds[0]),
            second: nameOf(nearest.kinds[1]),
            together: nearest.together,
            percent: percentOf(nearest.chance),
            pairs: pairsOfKinds,
            holm: percentOf(nearest.holm),
          })} ${say(words.siteClosest, { percent: percentOf(closest) })}`,
        ];
  return [...ofTrio, say(words.siteUneven, { percent: percentOf(uneven) }), ...ofCompany];
}
