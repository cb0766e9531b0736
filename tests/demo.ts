import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { compileLesson } from '../shared/compile/index.ts';
import { readLibrary } from '../src/loaders/read-library.ts';

/** The folder of the whole product. */
export const home = fileURLToPath(new URL('../', import.meta.url));

/** The demo content, read as the site reads it. */
export const { library: demoLibrary, problems: demoProblems } = await readLibrary(join(home, 'content'));

/** The demo lessons as text; the id is the file's name. */
export const demoLessons = readdirSync(join(home, 'content/lessons'))
  .filter((name) => name.endsWith('.md'))
  .toSorted()
  .map((name) => ({
    id: basename(name, '.md'),
    file: `content/lessons/${name}`,
    text: readFileSync(join(home, 'content/lessons', name), 'utf8'),
  }));

/** Every activity of every demo lesson that compiles, with the lesson it comes from. */
export const demoActivities = demoLessons.flatMap(({ id, file, text }) => {
  const { plan } = compileLesson(file, text, demoLibrary, id);
  return (plan?.activities ?? []).map((activity) => ({ lesson: id, activity }));
});
