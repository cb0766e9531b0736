import { isMap, isNode, isScalar, LineCounter, parseDocument, type Document } from 'yaml';
import type * as z from 'zod';
import { gatheringGoods, type Good, type Trader, type World } from '../../shared/bartering/index.ts';
import { worldFile, type WorldFile } from './world-schema.ts';

/** Something wrong in a world file, with its place; line and column count from 1. */
export interface WorldProblem {
  readonly code: string;
  readonly grade: 'error' | 'caution';
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly expected: string;
  readonly received: string;
  readonly mend: string;
}

/** What is wrong, with its place still as a path of keys. */
export interface Placed {
  readonly code: string;
  readonly grade: 'error' | 'caution';
  readonly path: readonly PropertyKey[];
  readonly atKey?: boolean;
  readonly expected: string;
  readonly received: string;
  readonly mend: string;
}

/** A world read, or what is wrong with its file; and a way to place what is found wrong with it later. */
export interface ReadWorld {
  readonly world: World | null;
  readonly problems: readonly WorldProblem[];
  readonly place: (fault: Placed) => WorldProblem;
}

/** The offset of what a path names: as deep as the file goes. */
function offsetOf(document: Document, path: readonly PropertyKey[], atKey: boolean): number {
  for (let depth = path.length; depth > 0; depth -= 1) {
    const parent = depth === 1 ? document.contents : document.getIn(path.slice(0, depth - 1), true);
    const isWhole = depth === path.length;
    if (isMap(parent)) {
      const pair = parent.items.find(
        ({ key }) => isScalar(key) && String(key.value) === String(path[depth - 1]),
      );
      const spot = isWhole && !atKey && isNode(pair?.value) ? pair.value : pair?.key;
      if (isNode(spot) && spot.range) return spot.range[0];
    } else {
      const node = document.getIn(path.slice(0, depth), true);
      if (isNode(node) && node.range) return node.range[0];
    }
  }
  return isNode(document.contents) ? (document.contents.range?.[0] ?? 0) : 0;
}

const shown = (value: unknown): string => {
  const text = typeof value === 'string' ? value : (JSON.stringify(value) ?? 'nothing');
  return text.length > 60 ? `${text.slice(0, 57)}...` : text;
};

/** One zod issue as a fault: what was expected there, what stood there, what to write. */
function faultsOf(issue: z.core.$ZodIssue, document: Document): Placed[] {
  const { path } = issue;
  const here = path.length === 0 ? document.toJS() : document.getIn(path);
  const plain: unknown = isNode(here) ? here.toJS(document) : here;
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => ({
      code: 'key-unknown',
      grade: 'error',
      path: [...path, key],
      atKey: true,
      expected: 'a key a world file has',
      received: key,
      mend: `take out "${key}", or see help for the keys there are`,
    }));
  }
  const key = String(path.at(-1) ?? 'the file');
  if (plain === undefined && path.length > 0) {
    const mend = `write "${key}:" here`;
    return [
      {
        code: 'key-missing',
        grade: 'error',
        path: path.slice(0, -1),
        atKey: true,
        expected: `the key "${key}"`,
        received: 'nothing',
        mend,
      },
    ];
  }
  const expected = EXPECTED[key] ?? expectedOf(issue);
  return [
    {
      code: 'value-unfit',
      grade: 'error',
      path,
      expected,
      received: shown(plain),
      mend: `write ${expected} for "${key}"`,
    },
  ];
}

const EXPECTED: Readonly<Record<string, string>> = {
  aim: 'the name of a good',
  goods: 'goods by name, each with nothing or its particulars after the colon',
  holds: 'goods with how many of each: { hide: 2 }',
  wants: 'goods with what they are worth: { hide: [3, 1] }',
  traders: 'traders by name',
  door: 'open or gift',
};

function expectedOf(issue: z.core.$ZodIssue): string {
  if (issue.path.at(-2) === 'wants') return 'a whole number from 0 to 999, or a list of them';
  if (issue.path.at(-2) === 'holds') return 'a whole number from 0 to 99';
  if (issue.code === 'invalid_type') return `a ${issue.expected}`;
  return issue.message;
}

const goodFrom = ([id, given]: [string, WorldFile['goods'][string]]): Good => {
  const known = gatheringGoods().find((good) => good.id === id);
  return {
    id,
    one: given?.one ?? known?.one ?? id,
    many: given?.many ?? known?.many ?? id,
    hours: given?.hours === undefined ? (known?.hours ?? null) : given.hours,
    spoilsAfter: given?.['spoils-after'] ?? null,
    onlyGiven: given?.['only-given'] ?? false,
  };
};

function traderFrom(id: string, given: WorldFile['you'] & Partial<WorldFile['traders'][string]>): Trader {
  const wants = Object.entries(given.wants).map(
    ([good, worth]) => [good, typeof worth === 'number' ? [worth] : worth] as const,
  );
  return {
    id,
    name: given.name ?? id,
    holds: given.holds,
    wants: Object.fromEntries(wants),
    forSwapping: given['for-swapping'] ?? [],
    door: given.door ?? 'open',
    returns: given.returns ?? null,
  };
}

const worldFrom = (file: WorldFile): World => ({
  goods: Object.entries(file.goods).map(goodFrom),
  pupil: traderFrom('you', file.you),
  traders: Object.entries(file.traders).map(([id, trader]) => traderFrom(id, trader)),
  aim: file.aim,
  bundle: file.bundle ?? 1,
});

/** Reads a world file; every problem has its line and column. */
export function readWorld(text: string, file: string): ReadWorld {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, prettyErrors: false });
  const at = (offset: number): { line: number; column: number } => {
    const { line, col } = lines.linePos(Math.min(offset, text.length));
    return { line: Math.max(line, 1), column: Math.max(col, 1) };
  };
  const place = ({ path, atKey = false, ...rest }: Placed): WorldProblem => ({
    ...rest,
    file,
    ...at(offsetOf(document, path, atKey)),
  });
  if (document.errors.length > 0) {
    const problems = document.errors.map((error): WorldProblem => ({
      code: 'yaml-unreadable',
      grade: 'error',
      file,
      ...at(error.pos[0]),
      expected: 'YAML',
      received: error.message,
      mend: 'look for a missing colon, bracket or quote here',
    }));
    return { world: null, problems, place };
  }
  const read = worldFile.safeParse(document.toJS());
  if (read.success) return { world: worldFrom(read.data), problems: [], place };
  return {
    world: null,
    problems: read.error.issues.flatMap((issue) => faultsOf(issue, document)).map(place),
    place,
  };
}

/** A problem as a command tells it: three lines under its place. */
export const toldProblem = ({
  file,
  line,
  column,
  grade,
  code,
  expected,
  received,
  mend,
}: WorldProblem): string =>
  `${file}:${line}:${column}  ${grade}  ${code}\n  expected  ${expected}\n  received  ${received}\n  mend      ${mend}\n`;
