/** What a verb may do with the world outside; handed in, so that verbs are tested without a process. */
export interface Io {
  readonly write: (text: string) => void;
  readonly complain: (text: string) => void;
  readonly read: (path: string) => Promise<string>;
  /** A file whose encoding is not known. */
  readonly readBytes: (path: string) => Promise<Uint8Array>;
  /** Writes a new file, with the folders it lies in; never over one that is there. */
  readonly save: (path: string, bytes: string | Uint8Array) => Promise<void>;
  /** Writes over a file that is there: the whole of it, or nothing. */
  readonly replace: (path: string, text: string) => Promise<void>;
  readonly exists: (path: string) => Promise<boolean>;
  /** The folder of the product itself: its demo content serves where a lesson has none beside it. */
  readonly home: string;
}

/** 0: done. 1: the file has errors. 2: the command was not understood, or a file could not be read. */
export type ExitCode = 0 | 1 | 2;
