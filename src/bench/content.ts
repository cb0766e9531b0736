import type { ContentFile } from '../../shared/library/index.ts';

/** A lesson of the site, to begin from. */
export interface SiteLesson {
  readonly id: string;
  readonly title: string;
  readonly text: string;
}

/** What the site was made from, as `bench/content.json` holds it. */
export interface BenchContent {
  readonly files: readonly ContentFile[];
  /** The product's own files; null where the site is made from those. */
  readonly home: readonly ContentFile[] | null;
  /** The pictures of its finds by name, in base64. */
  readonly photos: Readonly<Record<string, string>>;
  readonly lessons: readonly SiteLesson[];
}
