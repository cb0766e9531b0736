import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Problem } from '../../shared/lesson/index.ts';
import {
  NO_ROWS,
  readGlossary,
  readNotes,
  type Library,
  type NotesKnown,
  type ReadFile,
} from '../../shared/library/index.ts';

/** What the rows of these files may point to. */
type Known = Omit<NotesKnown, 'words'>;

/** A file of the folder itself, or else of the product's own content; null where neither has it. */
const pathOf = (name: string, folder: string, productContent: string): string | null =>
  [folder, productContent].map((root) => join(root, name)).find((file) => existsSync(file)) ?? null;

/**
 * Reads the glossary and what teacher notes are made from. A lead's own folder need not hold them: the product's serve.
 * A file with errors gives no rows, and its problems.
 */
export async function readNotesFiles(
  folder: string,
  productContent: string,
  known: Known,
): Promise<Pick<Library, 'glossary' | 'notes'> & { readonly problems: readonly Problem[] }> {
  const read = async <Value>(
    name: string,
    reader: (file: string, text: string) => ReadFile<Value>,
  ): Promise<{ readonly value: Value | null; readonly problems: readonly Problem[] }> => {
    const file = pathOf(name, folder, productContent);
    return file === null ? { value: null, problems: [] } : reader(file, await readFile(file, 'utf8'));
  };
  const glossary = await read('glossary.yaml', (file, text) => readGlossary(file, text, known.sources));
  const words = (glossary.value ?? []).map(({ word }) => word);
  const notes = await read('notes.yaml', (file, text) => readNotes(file, text, { ...known, words }));
  return {
    glossary: glossary.value ?? [],
    notes: notes.value ?? NO_ROWS,
    problems: [...glossary.problems, ...notes.problems],
  };
}
