import { join } from 'node:path';
import type { Library } from '../../shared/library/index.ts';
import { showProblem } from '../command/show-problem.ts';
import { readLessons, type LoadedLesson } from './read-lessons.ts';
import { readLibrary } from './read-library.ts';

export interface SiteContent {
  readonly library: Library;
  readonly lessons: readonly LoadedLesson[];
}

async function load(folder: string): Promise<SiteContent> {
  const { library, problems } = await readLibrary(folder, 'content');
  // What is left out of a build is told in its log, at its place.
  for (const problem of problems) process.stderr.write(showProblem(problem, null));
  return { library, lessons: await readLessons(join(folder, 'lessons'), library) };
}

let built: Promise<SiteContent> | null = null;

/**
 * The content the site is made from: the folder named by PITLORE_CONTENT, else `content`. Read once for a build, and
 * afresh for every request while developing.
 */
export function siteContent(): Promise<SiteContent> {
  const folder = process.env['PITLORE_CONTENT'] ?? 'content';
  if (import.meta.env.DEV) return load(folder);
  built ??= load(folder);
  return built;
}
