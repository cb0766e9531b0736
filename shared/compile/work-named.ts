import type { EdgeClass, StationKind } from '../safety/index.ts';
import type { Plan } from './plan.ts';

/** Work a lesson speaks of, by the station where it would be shown; words are ours (ASM), and rather too many than too few. */
const WORK: readonly (readonly [StationKind, RegExp])[] = [
  ['knapping-demo', /\b(?:knap|flak(?:e|ing)|pressure)\w*/i],
  ['wet-grinding-demo', /\b(?:grind|polishing|dust)\w*/i],
  ['hafting-demo', /\b(?:axes?|adzes?|chop\w*|haft\w*)\b/i],
  [
    'pitch-fire-demo',
    /\b(?:pitch|resin|birch tar|bonfires?|fire-?making|(?:mak|light)(?:e|es|ing|s)? (?:a )?fires?)\b/i,
  ],
];

/** Work that every activity about making speaks of, whatever its words. */
const OF_MAKING: readonly StationKind[] = ['knapping-demo', 'wet-grinding-demo', 'hafting-demo'];

/** Stone that cuts wherever it breaks. */
const CUTTING_STONE = /\b(?:flints?|obsidian|chert)\b/i;

const textsIn = (value: unknown): readonly string[] =>
  typeof value === 'string'
    ? [value]
    : typeof value === 'object' && value !== null
      ? Object.values(value).flatMap(textsIn)
      : [];

/**
 * What a lesson puts before pupils' eyes in words, wherever it stands: titles, prose, names of finds and steps, reasons.
 *
 * @example workNamed(plan).works // ['wet-grinding-demo'] for a lesson about the hours an axe takes
 */
export function workNamed({ title, about, parts, activities }: Plan): {
  readonly works: readonly StationKind[];
  readonly edges: readonly EdgeClass[];
} {
  const text = textsIn([title, about, parts, activities]).join('\n');
  const isOfMaking = activities.some(({ aboutMaking }) => aboutMaking === true);
  return {
    works: WORK.flatMap(([station, words]) =>
      words.test(text) || (isOfMaking && OF_MAKING.includes(station)) ? [station] : [],
    ),
    edges: CUTTING_STONE.test(text) || isOfMaking ? ['E2'] : [],
  };
}
