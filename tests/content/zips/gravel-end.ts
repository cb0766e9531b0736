import type { CarriedVisit } from '../../../shared/visit-folder/index.ts';

const SITE = `id: gravel-end
name: Gravel End
code: GE
status: invented
story: Invented for a test.
organisation: Wendle Marsh Field School (invented)
period: { label: Late Neolithic, from-bce: 2900, to-bce: 2400, status: FM, note: usual span }
soils: gravel
pits:
  - id: P1
    cut: 1100
    centre: { east-m: 1, north-m: 1 }
    top-level-m-od: 8
    length-mm: 1000
    width-mm: 1000
    depth-mm: 300
    profile: bowl
    fills: [{ context: 1102, description: silt, thickness-mm: 200 }]
photos:
  - { find: P1-101, file: jaw.jpg, shows: A row of teeth along the top., credit: 'Wendle Marsh Field School (invented)' }
`;

const TABLE = `pit,small find,context,object type,material,length mm,width mm,thickness mm,mass g,count,state,made by,used for,age,role,side,decoration,note
P1,101,1102,pig-jaw,bone,118,49,24,57,,broken,natural,food,late-neolithic,evidence,left,,
P1,102,1102,end-scraper,flint,46,37,12,25,,whole,flaked,scraping-hide-or-wood,late-neolithic,evidence,,,
P1,103,1102,blade,flint,68,19,6,7.7,,whole,flaked,cutting,late-neolithic,evidence,,,
P1,104,1102,natural-pebble,flint,61,43,30,103,,whole,natural,none,natural,decoy-natural,,,"smooth, all over"
P1,105,1102,serrated-flake,flint,57,21,6,6.9,,whole,flaked,working-plants,late-neolithic,evidence,,,
P1,106,1102,hazelnut-shells,charred-shell,12,10,2,0.3,14,burnt,natural,food,late-neolithic,evidence,,,
`;

const LESSON = `---
title: What lay at Gravel End
site: gravel-end
bands: [7-9]
minutes: 15
---
Look at each thing. Did people shape it? Or is it just as it grew?

\`\`\`sort
title: Shaped or not?
finds: { pit: P1 }
by: made-by
trays:
  - { name: shaped, holds: [flaked], hint: people shaped it }
  - { name: not shaped, holds: [natural], hint: it grew like this }
minutes: 12
\`\`\`
`;

/** A JPEG of eight points by eight, all alike, made by sharp 0.35.5; nothing beside the picture is in it. */
export const PICTURE = Uint8Array.from(
  atob(
    '/9j/2wBDABsSFBcUERsXFhceHBsgKEIrKCUlKFE6PTBCYFVlZF9VXVtqeJmBanGQc1tdhbWGkJ6jq62rZ4C8ybqmx5moq6T/2wBDARweHigjKE4rK06kbl1upKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKSkpKT/wAARCAAIAAgDASIAAhEBAxEB/8QAFQABAQAAAAAAAAAAAAAAAAAAAAL/xAAUEAEAAAAAAAAAAAAAAAAAAAAA/8QAFAEBAAAAAAAAAAAAAAAAAAAAAv/EABQRAQAAAAAAAAAAAAAAAAAAAAD/2gAMAwEAAhEDEQA/ALAA3//Z',
  ),
  (sign) => sign.codePointAt(0) ?? 0,
);

/** A visit with its own site, finds table and photograph, all invented: what the zip of the first version holds. */
export const gravelEnd: CarriedVisit = {
  name: 'gravel-end-für-alle',
  text: LESSON,
  files: [
    { path: 'sites/gravel-end.finds.csv', file: 'gravel-end.finds.csv', text: TABLE },
    { path: 'sites/gravel-end.yaml', file: 'gravel-end.yaml', text: SITE },
  ],
  photos: new Map([['jaw.jpg', PICTURE]]),
};
