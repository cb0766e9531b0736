import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { home } from '../demo.ts';

/** A file of the product, by its path from the top. */
export interface SourceFile {
  readonly path: string;
  readonly text: string;
}

/** Every file under some folders whose name has one of some endings. */
export const sourceFiles = (folders: readonly string[], endings: readonly string[]): readonly SourceFile[] =>
  folders.flatMap((folder) =>
    readdirSync(join(home, folder), { recursive: true, encoding: 'utf8' })
      .filter((name) => endings.some((ending) => name.endsWith(ending)))
      .toSorted()
      .map((name) => ({ path: `${folder}/${name}`, text: readFileSync(join(home, folder, name), 'utf8') })),
  );

/** The line, from 1, at which an offset stands. */
export const lineAt = (text: string, offset: number): number => text.slice(0, offset).split('\n').length;
