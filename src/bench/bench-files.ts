import type { PackFiles } from './make-pack-here.ts';

/** Where the site serves what the Bench puts together and shows. */
export interface BenchFiles extends PackFiles {
  /** A pack with no lesson in it. */
  readonly preview: string;
  /** A page with no papers in it. */
  readonly papers: string;
}
