/** What is said of one copy of the site: it lies in the copy itself, as offline.json. */
export interface Copy {
  /** When it was built, ISO 8601. */
  readonly made: string;
  readonly lessons: number;
  readonly files: number;
  readonly bytes: number;
}

/** What a page asks the worker that keeps a copy, to be told of it. */
export const WHAT_COPY = 'what copy is this?';
