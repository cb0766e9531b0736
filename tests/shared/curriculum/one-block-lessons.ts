import { compileLesson } from '../../../shared/compile/index.ts';
import type { ClaimGrade } from '../../../shared/curriculum/index.ts';
import type { Library } from '../../../shared/library/index.ts';

// Activities of the demo site, each as it would stand in a file.
const P7 = 'finds: { pit: P7, leave-out: [P7-167, P7-169, P7-170, P7-172] }';
export const MADE_BY = `\`\`\`sort\ntitle: How was each made?\n${P7}\nby: made-by\ntrays: [flaked, ground, { name: heat, holds: [fired, machine] }, { name: not made, holds: [natural, burnt] }]\nminutes: 9\n`;
export const OWN_TRAYS = `\`\`\`sort\ntitle: Trays of your own\n${P7}\nby: material\ntrays: ours\nminutes: 9\n`;
export const SMALL = `\`\`\`sort\ntitle: Made or not?\nfinds: { pit: P3, leave-out: [P3-128] }\nby: made-by\ntrays:\n  - { name: made, holds: [carved, ground, fired] }\n  - { name: not made, holds: [natural, burnt] }\nminutes: 8\n`;
export const STEPS = `\`\`\`order\ntitle: What came first?\nsteps:\n  - { id: find, name: Find a stone }\n  - { id: chip, name: Chip it, must-follow: [find] }\n  - { id: rub, name: Rub it, must-follow: [chip] }\nminutes: 8\n`;
export const TWO_PITS = `\`\`\`compare\ntitle: In both?\nask: places\npits: [P3, P4]\nkinds: [pig-jaw, bone-pin, chalk-disc, cattle-bone, hazelnut-shells]\nminutes: 8\n`;
export const estimate = (ask: string, of = 'grinding-hours'): string =>
  `\`\`\`estimate\ntitle: How much?\nof: ${of}\nfor: { find: P7-165, length-mm: 150 }\nask: ${ask}\nlevers: []\nminutes: 8\n`;
export const FIRE = `\`\`\`barter\ntitle: Come home with an axe\nmake: { traders: 4, chain: 3, goods: [hide, flint, pot, hazelnuts, axe, cord, basket, antler], aim: axe }\nminutes: 8\n`;
export const CLASS = '```barter\ntitle: All better off?\nclass: { pupils: 12 }\nminutes: 8\n';
export const PROSE = '';

export const vouched = (block: string, ...words: readonly string[]): string =>
  `${block}vouched: [${words.join(', ')}]\n`;

/** A lesson file of one block, with its claims as written. */
export const lessonOf = (block: string, bands: string, claims: readonly string[]): string => {
  const written = claims.length === 0 ? '' : `claims:\n${claims.map((claim) => `  - ${claim}\n`).join('')}`;
  return `---\ntitle: One\nsite: wendle-marsh\nbands: ${bands}\nminutes: 30\n${written}---\nLook.\n\n${block}${block === '' ? '' : '```\n'}`;
};

export const claimOf = (outcome: string, grade: ClaimGrade): string =>
  `{ outcome: ${outcome}, grade: ${grade} }`;

/** The plan of a lesson, and what stands in its way. */
export const errorsOf = (text: string, library: Library) => {
  const { plan, problems } = compileLesson('one.md', text, library, '1');
  return { plan, errors: problems.filter(({ grade }) => grade === 'error') };
};
