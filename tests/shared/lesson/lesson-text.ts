import { compileLesson } from '../../../shared/compile/index.ts';
import type { Problem } from '../../../shared/lesson/index.ts';
import { demoLibrary } from '../../demo.ts';

/** Seven lines of head; what follows begins on line 8. */
export const HEAD =
  '---\ntitle: Six pits\nsite: wendle-marsh\nbands: [7-9]\nminutes: 40\nabout: Six pits and a question\n---\n';

/** Seven lines of a block that compiles without a problem. */
export const BLOCK =
  '```sort\ntitle: Who made this?\nfinds: [P3-124, P3-125, P3-127, P3-131]\nby: made-by\ntrays: [carved, ground, fired, not made]\nminutes: 8\n```\n';

export const problemsOf = (text: string): readonly Problem[] =>
  compileLesson('six-pits.md', text, demoLibrary, '1').problems;

/** Problems as `code line:column`, and what stands there in the file. */
export const told = (text: string): readonly string[] =>
  problemsOf(text).map(({ code, from, to }) => {
    const plain = text.startsWith('\uFEFF') ? text.slice(1) : text;
    return `${code} ${from.line}:${from.column} ${JSON.stringify(plain.slice(from.offset, to.offset))}`;
  });
