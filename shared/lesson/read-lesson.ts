import type * as z from 'zod';
import { fileWords } from '../words/en/problems.ts';
import { cutLesson } from './cut-lesson.ts';
import { lessonHead, type LessonHead } from './lesson-head.ts';
import { nearest } from './nearest.ts';
import { blockPassages, type Passage } from './passages.ts';
import { placeFaults, problemAt, type Locate, type SourceText } from './place-faults.ts';
import { lineMap } from './point.ts';
import { byPlace, type Problem } from './problem.ts';
import { readBody, type RawBlock } from './read-body.ts';
import { readYaml } from './read-yaml.ts';
import type { ReadYaml } from './remember-yaml.ts';
import { shape } from './shape-faults.ts';

/** An activity block that fits its kind's schema, with the way from its keys to their places in the file. */
export interface LessonBlock {
  readonly kindName: string;
  readonly value: unknown;
  readonly locate: Locate;
  /** The words pupils read of it. */
  readonly passages: readonly Passage[];
}

export type LessonPart =
  { readonly part: 'prose'; readonly html: string } | { readonly part: 'block'; readonly block: LessonBlock };

/** A lesson file as read. The head is null where it does not fit; blocks that do not fit are left out. */
export interface Lesson {
  readonly source: SourceText;
  readonly head: LessonHead | null;
  readonly locateHead: Locate;
  readonly parts: readonly LessonPart[];
  /** The words of its prose, in order. */
  readonly prose: readonly Passage[];
  readonly problems: readonly Problem[];
}

/** The longest lesson that is read, in UTF-16 units: far beyond any real one, and quick to refuse. */
export const LONGEST_LESSON = 200_000;

/** The most lines and marks in a head or a block: a sort of sixty finds, each argued, has about 700. */
const MOST_MARKS = 1500;

const nothing: Locate = () => ({ from: 0, to: 0 });

/**
 * Reads any text at all as a lesson file: what fits is read, and each thing that does not is a problem with its place
 * in the whole file and a mend. Never throws.
 *
 * @param kinds The schema of each kind, by the name that stands after the back-ticks.
 * @param readRun Reads its YAML: one that remembers spares a lesson that is being typed most of it.
 */
export function readLesson(
  file: string,
  given: string,
  kinds: Readonly<Record<string, z.ZodType>>,
  readRun: ReadYaml = readYaml,
): Lesson {
  const shift = given.startsWith('\uFEFF') ? 1 : 0;
  const text = given.slice(shift);
  const source: SourceText = { file, lines: lineMap(text.slice(0, LONGEST_LESSON)), shift };
  const refused = (
    code: 'file-empty' | 'file-too-long',
    words: ReturnType<typeof fileWords.empty>,
  ): Lesson => ({
    source,
    head: null,
    locateHead: nothing,
    parts: [],
    prose: [],
    problems: [problemAt(source, { from: 0, to: 0 }, { code, grade: 'error', ...words })],
  });
  if (text.trim() === '') return refused('file-empty', fileWords.empty());
  if (text.length > LONGEST_LESSON)
    return refused('file-too-long', fileWords.tooLong(text.length, LONGEST_LESSON));

  const problems: Problem[] = [];
  const cut = cutLesson(text);
  if (cut.fault === 'missing') {
    problems.push(
      problemAt(
        source,
        { from: 0, to: 0 },
        { code: 'head-missing', grade: 'error', ...fileWords.headMissing() },
      ),
    );
  }
  if (cut.fault === 'unclosed') {
    problems.push(
      problemAt(
        source,
        { from: 0, to: 3 },
        { code: 'head-unclosed', grade: 'error', ...fileWords.headUnclosed() },
      ),
    );
  }

  const readPart = <Data>(yaml: string, toFile: (offset: number) => number, schema: z.ZodType<Data>) => {
    const read = readRun(yaml, MOST_MARKS);
    const locate: Locate = (path, atKey) => {
      const span = read.locate(path, atKey);
      return { from: toFile(span.from), to: toFile(span.to) };
    };
    for (const { span, ...fault } of read.faults) {
      problems.push(problemAt(source, { from: toFile(span.from), to: toFile(span.to) }, fault));
    }
    // What the YAML reader could not read would only be reported a second time as a missing key.
    if (read.faults.some((fault) => fault.code === 'yaml-unreadable')) return { value: null, locate };
    const shaped = shape(schema, read.data ?? {});
    problems.push(...placeFaults(source, shaped.faults, locate));
    return { value: shaped.value, locate };
  };

  const headText = cut.head ?? { text: '', offset: 0 };
  const head =
    cut.fault === null
      ? readPart(headText.text, (offset) => headText.offset + offset, lessonHead)
      : { value: null, locate: nothing };

  const body = readBody(source, cut.body.text, cut.body.offset);
  problems.push(...body.problems);
  const readBlock = (block: RawBlock): LessonBlock | null => {
    const schema = Object.hasOwn(kinds, block.kindName) ? kinds[block.kindName] : undefined;
    if (schema === undefined) {
      const known = Object.keys(kinds);
      const near = nearest(block.kindName, known);
      const words = fileWords.kindUnknown(block.kindName, near, known);
      const replacement = near === null || block.kindName === '' ? {} : { replacement: near };
      problems.push(
        problemAt(source, block.nameSpan, { code: 'kind-unknown', grade: 'error', ...words, ...replacement }),
      );
      return null;
    }
    if (block.yaml.trim() === '') {
      problems.push(
        problemAt(source, block.nameSpan, {
          code: 'block-empty',
          grade: 'error',
          ...fileWords.blockEmpty(block.kindName),
        }),
      );
      return null;
    }
    const { value, locate } = readPart(block.yaml, block.toFile, schema);
    if (value === null) return null;
    return { kindName: block.kindName, value, locate, passages: blockPassages(value, locate, text) };
  };
  const parts = body.parts.flatMap((part): readonly LessonPart[] => {
    if (part.part === 'prose') return [part];
    const block = readBlock(part.block);
    return block === null ? [] : [{ part: 'block', block }];
  });
  return {
    source,
    head: head.value,
    locateHead: head.locate,
    parts,
    prose: body.prose,
    problems: problems.toSorted(byPlace),
  };
}
