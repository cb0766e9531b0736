import type { OwnFiles } from '../../shared/bench/index.ts';
import type { AddedUp, ClaimLine } from '../../shared/compile/index.ts';
import type { Problem } from '../../shared/lesson/index.ts';
import type { ContentFile } from '../../shared/library/index.ts';
import type { Answers, FindsIn, GuessTold, IntoSite } from '../../shared/finds-in/index.ts';
import type { DraftRequest } from '../../shared/drafting/index.ts';
import type { LessonDay } from '../../shared/lesson-day/index.ts';
import type { LessonView } from '../player/lesson-view.ts';
import type { PrintedVisit } from '../printing/print-view.ts';
import type { SiteLesson } from './content.ts';

/** What the page asks of its worker: hold this text against the library. */
export interface CheckAsk {
  readonly ask: 'check';
  /** Answers carry it: a late one is known by it. */
  readonly number: number;
  /** The lesson's name: it seeds the dealing of finds, as the name of a file does. */
  readonly name: string;
  readonly text: string;
  /** The lead's own sites and finds. */
  readonly files: readonly ContentFile[];
  readonly pupils: number;
  /** Makes the page for one band; null where no page is looked at. */
  readonly page: { readonly band: string | null } | null;
}

/** A lesson as a pack needs it. */
export interface PackPart {
  readonly title: string;
  readonly language: string;
  readonly lesson: LessonView;
}

/** A paper a visit has: for whom, and how many copies. */
export interface PaperListed {
  readonly path: string;
  readonly name: string;
  readonly whom: string;
  readonly copies: string;
}

export interface Checked {
  readonly answer: 'checked';
  readonly number: number;
  readonly name: string;
  /** The text that was checked: mends are for it alone. */
  readonly text: string;
  readonly problems: readonly Problem[];
  readonly claims: readonly ClaimLine[];
  /** Null where an error stands in the way. */
  readonly added: AddedUp | null;
  readonly bands: readonly string[];
  readonly page: PackPart | null;
  /** What can be printed; [] where an error stands in the way. */
  readonly papers: readonly PaperListed[];
  readonly tookMs: number;
}

/** A word a lead may write in a field, with what it means. */
export interface Offer {
  readonly value: string;
  readonly means: string;
}

/** What a lesson may point to, for the fields of a form. */
export interface Offers {
  readonly sites: readonly (Offer & {
    readonly pits: readonly Offer[];
    readonly finds: readonly (Offer & { readonly lengthMm: number })[];
    /** A block of each kind to begin from, as it stands in a file. */
    readonly starters: Readonly<Record<string, string>>;
  })[];
  /** Values of each attribute. */
  readonly values: Readonly<Record<string, readonly Offer[]>>;
  readonly outcomes: readonly Offer[];
  readonly sources: readonly Offer[];
}

export interface Opened {
  readonly answer: 'opened';
  readonly offers: Offers;
  readonly lessons: readonly SiteLesson[];
  /** What is wrong in the lead's own files. */
  readonly problems: readonly Problem[];
}

/** Reads the library. The photographs of one's own are told here alone: they are too heavy to go with every typed sign. */
export interface OpenAsk {
  readonly ask: 'open';
  readonly content: string;
  readonly own: OwnFiles;
}

/** A finds list to be read, with what the lead has said of it. */
export interface FindsAsk {
  readonly ask: 'finds-in';
  readonly number: number;
  readonly text: string;
  readonly answers: Answers;
  /** What the site is to be called. */
  readonly name: string;
  /** The site that is there, where the finds are to go into one; null for a new one. */
  readonly into: string | null;
  /** The lead's own files. */
  readonly files: readonly ContentFile[];
}

/** What becomes of a list in a site that is there. */
export interface IntoTold extends Pick<IntoSite, 'rows' | 'counts' | 'questions' | 'places'> {
  readonly site: string;
  readonly name: string;
  /** Errors in the site's own files: finds of rows with one are not seen. */
  readonly errors: number;
}

export interface FindsRead {
  readonly answer: 'finds-in';
  readonly number: number;
  readonly read: Omit<FindsIn, 'finds'>;
  readonly guesses: readonly GuessTold[];
  /** The finds that are ready, as files of a content folder; [] where there are none, or they cannot be written. */
  readonly files: readonly ContentFile[];
  readonly site: string;
  /** Null for a new site. */
  readonly into: IntoTold | null;
  /** True where a new site would take the place of one that is there. */
  readonly isTaken: boolean;
}

/** All files that belong to a site, so that they can be made the lead's own. */
export interface SiteAsk {
  readonly ask: 'site';
  readonly number: number;
  readonly site: string;
}

export interface SiteRead {
  readonly answer: 'site';
  readonly number: number;
  /** Null where the content has no such site. */
  readonly site: OwnFiles | null;
}

export interface DraftAsk {
  readonly ask: 'draft';
  readonly number: number;
  readonly site: string;
  readonly files: readonly ContentFile[];
  readonly request: DraftRequest;
}

export interface Drafted {
  readonly answer: 'drafted';
  readonly number: number;
  readonly text: string | null;
  /** Why the lesson as a whole is as it is. */
  readonly reasons: readonly string[];
  readonly activities: readonly {
    readonly title: string;
    readonly summary: string;
    readonly reasons: readonly string[];
  }[];
  readonly lacking: readonly string[];
}

/** A visit to be made a day of. */
export interface DayAsk {
  readonly ask: 'day';
  readonly number: number;
  readonly name: string;
  readonly text: string;
  readonly files: readonly ContentFile[];
  readonly pupils: number;
  /** Titles of the days that are there already. */
  readonly taken: readonly string[];
}

export interface DayMade {
  readonly answer: 'day';
  readonly number: number;
  /** Null where an error stands in the way. */
  readonly made: LessonDay | null;
}

/** All papers of a visit, to be looked at or printed. */
export interface PapersAsk extends Pick<CheckAsk, 'name' | 'text' | 'files'> {
  readonly ask: 'papers';
  readonly number: number;
}

export interface PapersMade {
  readonly answer: 'papers';
  readonly number: number;
  /** Null where an error stands in the way. */
  readonly visit: PrintedVisit | null;
}

/** The library could not be read at all. */
export interface Failed {
  readonly answer: 'failed';
  readonly because: string;
}

export type Ask = CheckAsk | FindsAsk | SiteAsk | DraftAsk | DayAsk | PapersAsk | OpenAsk;
export type Answer = Checked | Opened | FindsRead | SiteRead | Drafted | DayMade | PapersMade | Failed;
