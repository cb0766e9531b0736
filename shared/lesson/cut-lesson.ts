/** The two parts of a lesson file, with the offset at which each begins. */
export interface CutLesson {
  readonly head: { readonly text: string; readonly offset: number } | null;
  readonly body: { readonly text: string; readonly offset: number };
  readonly fault: 'missing' | 'unclosed' | null;
}

const FENCE = /^---[ \t]*(?:\r\n|\n|\r|$)/;

/**
 * Cuts a lesson file at the two lines of `---`.
 *
 * @example cutLesson('---\ntitle: x\n---\nText').body.text // 'Text'
 */
export function cutLesson(text: string): CutLesson {
  const opening = FENCE.exec(text)?.[0];
  if (opening === undefined) return { head: null, body: { text, offset: 0 }, fault: 'missing' };
  let offset = opening.length;
  while (offset < text.length) {
    const rest = text.slice(offset);
    const closing = FENCE.exec(rest)?.[0];
    if (closing !== undefined) {
      const bodyOffset = offset + closing.length;
      return {
        head: { text: text.slice(opening.length, offset), offset: opening.length },
        body: { text: text.slice(bodyOffset), offset: bodyOffset },
        fault: null,
      };
    }
    const lineEnd = /\r\n|\n|\r/.exec(rest);
    offset = lineEnd === null ? text.length : offset + lineEnd.index + lineEnd[0].length;
  }
  return {
    head: { text: text.slice(opening.length), offset: opening.length },
    body: { text: '', offset: text.length },
    fault: 'unclosed',
  };
}
