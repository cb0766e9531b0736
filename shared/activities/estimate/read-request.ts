import { nearest } from '../../lesson/nearest.ts';
import type { Fault, Path } from '../../lesson/problem.ts';
import type { Find, Site } from '../../library/library.ts';
import { CHOICES, MEASURES, type MakingFigures, type MakingRequest } from '../../making/index.ts';
import { estimateProblems } from '../../words/en/estimate-problems.ts';
import type { EstimateBlock } from './schema.ts';

/** What a block's `for` comes to: the find, and all that the model is asked with. */
export interface ReadRequest {
  readonly find: Find | null;
  readonly request: MakingRequest;
  readonly faults: readonly Fault[];
}

const kebab = (name: string): string => name.replaceAll(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

/** Where in the block an input stands, or where it would. */
export function placeOfInput(block: EstimateBlock, input: string): Path {
  const subject = block.for;
  if (subject === undefined) return ['of'];
  if (typeof subject === 'string') return ['for'];
  const key = kebab(input);
  if (Object.hasOwn(subject, key)) return ['for', key];
  return subject.find === undefined ? ['for'] : ['for', 'find'];
}

/** What the lead wrote of sizes and choices, by the model's names. */
function written(block: EstimateBlock): MakingRequest {
  const subject = block.for;
  if (subject === undefined || typeof subject === 'string') return {};
  const values: Readonly<Record<string, unknown>> = subject;
  const entries = [...MEASURES, ...CHOICES, 'mined'].flatMap((name): [string, unknown][] => {
    const value = values[kebab(name)];
    return value === undefined ? [] : [[name, value]];
  });
  // The schema allows each of these its own type only.
  return Object.fromEntries(entries) as MakingRequest;
}

/** Stones that are pecked start from a pecked blank, unless the lead says otherwise. */
function withPreform(figures: MakingFigures, request: MakingRequest): MakingRequest {
  const stone = figures.tables.stone.find(({ id }) => id === request.stone);
  const hasPecked = figures.tables.preform.some(({ id }) => id === 'pecked');
  return stone?.shapedBy === 'pecking' && request.preform === undefined && hasPecked
    ? { ...request, preform: 'pecked' }
    : request;
}

/** Reads what is asked about: sizes and stone of the find, then whatever the block says otherwise. */
export function readRequest(block: EstimateBlock, site: Site, figures: MakingFigures): ReadRequest {
  const own = written(block);
  const findId = typeof block.for === 'string' ? block.for : block.for?.find;
  if (findId === undefined) return { find: null, request: withPreform(figures, own), faults: [] };
  const path = typeof block.for === 'string' ? ['for'] : ['for', 'find'];
  const finds = site.pits.flatMap((pit) => pit.finds);
  const find = finds.find(({ id }) => id === findId);
  if (find === undefined) {
    const ids = finds.map(({ id }) => id);
    const near = nearest(findId, ids);
    const words = estimateProblems.findUnknown(findId, near, ids.length, site.name);
    const replacement = near === null ? {} : { replacement: near };
    return {
      find: null,
      request: own,
      faults: [{ code: 'find-unknown', grade: 'error', path, ...words, ...replacement }],
    };
  }
  const faults: Fault[] = [];
  const stones = figures.tables.stone.map(({ id }) => id);
  const { material } = find.attributes;
  if (own.stone === undefined && !stones.includes(material)) {
    const words = estimateProblems.stoneUnknown(find.id, material, stones);
    faults.push({ code: 'beyond-model', grade: 'error', path, ...words });
  }
  if (find.attributes.state === 'broken' && own.lengthMm === undefined) {
    const words = estimateProblems.findBroken(find.id, find.lengthMm);
    faults.push({ code: 'find-broken', grade: 'caution', path, ...words });
  }
  const { lengthMm, widthMm, thicknessMm } = find;
  const request = withPreform(figures, { lengthMm, widthMm, thicknessMm, stone: material, ...own });
  return { find, request, faults };
}
