import type { ContentFile } from '../library/read-content.ts';

/** The last finds list that was taken in, and the files as they were before it: one press takes it back. */
export interface Taking {
  /** The name of the site it went into. */
  readonly site: string;
  readonly finds: number;
  /** The files it changed, as they were. */
  readonly before: readonly ContentFile[];
  /** All that it wrote, each by a mark of its text. */
  readonly wrote: readonly { readonly path: string; readonly mark: string }[];
}

/** A mark by which a text is known again; not proof against anybody who means to deceive. */
function markOf(text: string): string {
  let mark = 7;
  for (let index = 0; index < text.length; index += 1)
    mark = (Math.imul(mark, 31) + text.charCodeAt(index)) >>> 0;
  return `${text.length} ${mark}`;
}

/**
 * Lays the files of a taking over one's own, and keeps those it changes as they were.
 *
 * @param told The name of the site, and how many finds went into it.
 */
export function takeIn(
  own: readonly ContentFile[],
  taken: readonly ContentFile[],
  told: Pick<Taking, 'site' | 'finds'>,
): { readonly files: readonly ContentFile[]; readonly taking: Taking } {
  const paths = new Set(taken.map(({ path }) => path));
  return {
    files: [...own.filter(({ path }) => !paths.has(path)), ...taken],
    taking: {
      ...told,
      before: own.filter(({ path }) => paths.has(path)),
      wrote: taken.map(({ path, text }) => ({ path, mark: markOf(text) })),
    },
  };
}

/**
 * One's own files as they were before a taking; other files stay as they are.
 *
 * @returns null where a file it wrote has been changed since: what was done to it would be lost.
 * @example takeBack(takeIn([], [file], told).files, takeIn([], [file], told).taking) // []
 */
export function takeBack(own: readonly ContentFile[], taking: Taking): readonly ContentFile[] | null {
  const textOf = new Map(own.map(({ path, text }) => [path, text]));
  const isAsWritten = taking.wrote.every(({ path, mark }) => {
    const text = textOf.get(path);
    return text !== undefined && markOf(text) === mark;
  });
  if (!isAsWritten) return null;
  const paths = new Set(taking.wrote.map(({ path }) => path));
  return [...own.filter(({ path }) => !paths.has(path)), ...taking.before];
}
