import type { Find, Site } from '../../../shared/library/index.ts';

/** A site made of copies of another's finds, each a little different in size, fifty to a pit. */
export function seasonOf(site: Site, count: number): Site {
  const models = site.pits.flatMap(({ finds }) => finds);
  const perPit = 50;
  return {
    ...site,
    id: 'season',
    name: 'A season',
    pits: Array.from({ length: Math.ceil(count / perPit) }, (_, place) => {
      const pit = site.pits[place % site.pits.length];
      if (pit === undefined) throw new Error('a site without pits');
      const id = `Q${place + 1}`;
      const finds = Array.from({ length: perPit }, (__, index): Find => {
        const number = place * perPit + index + 1;
        const model = models[(number * 7) % models.length];
        if (model === undefined) throw new Error('a site without finds');
        return {
          ...model,
          id: `${id}-${number}`,
          pit: id,
          smallFind: number,
          context: pit.fills[0]?.context ?? 1,
          lengthMm: model.lengthMm + (number % 5),
        };
      });
      return { ...pit, id, finds };
    }),
  };
}
