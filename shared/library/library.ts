import type { Curricula } from '../curriculum/index.ts';
import type { Photo } from '../drawing/index.ts';
import type { Band } from './bands.ts';
import type { GlossaryWord } from '../glossary/index.ts';
import type { MakingEvidence } from './making-evidence.ts';
import type { NotesRows } from './notes-rows.ts';
import type { Comparison } from './read-comparisons.ts';
import type { SafetyRules } from '../safety/rules.ts';
import type { Status } from './status.ts';

/** The attributes of a find a lesson may sort by; each has its values in the vocabulary. */
export const ATTRIBUTES = ['material', 'made-by', 'used-for', 'age', 'state', 'object-type'] as const;
export type Attribute = (typeof ATTRIBUTES)[number];

export const STATES = ['whole', 'broken', 'burnt', 'worn'] as const;
export const ROLES = ['evidence', 'decoy-natural', 'decoy-modern', 'decoy-older'] as const;

/** An object from a pit, with what was recorded of it. Lengths in mm, mass in g. */
export interface Find {
  /** Pit and small-find number: `P3-124`. One in a library. */
  readonly id: string;
  readonly pit: string;
  readonly smallFind: number;
  /** The fill it lay in. */
  readonly context: number;
  readonly attributes: Readonly<Record<Attribute, string>>;
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly thicknessMm: number;
  readonly massG?: number;
  /** How many pieces this row stands for; 1 where the record says nothing. */
  readonly count: number;
  readonly role: (typeof ROLES)[number];
  readonly side?: 'left' | 'right';
  readonly decoration?: string;
  /** What the record adds: "pecked all round". Shown on the record card, never before. */
  readonly note?: string;
  /** The lead's own photograph, read from a file beside the site's. */
  readonly photo?: Photo;
  readonly status: Status;
}

/** The pit a find lay in, from its id: pits have no hyphen in theirs. @example pitOfFind('P3-124') // 'P3' */
export const pitOfFind = (find: string): string => find.slice(0, Math.max(0, find.indexOf('-')));

export interface Fill {
  readonly context: number;
  readonly description: string;
  readonly thicknessMm: number;
}

export interface Pit {
  /** `P3`. */
  readonly id: string;
  readonly cut: number;
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly depthMm: number;
  readonly profile: 'bowl' | 'steep-sided';
  /** Metres east and north of the site's own corner. */
  readonly centre: { readonly eastM: number; readonly northM: number };
  readonly topLevelMOd: number;
  /** From the top down. */
  readonly fills: readonly Fill[];
  readonly finds: readonly Find[];
}

export interface Site {
  readonly id: string;
  readonly name: string;
  readonly code: string;
  readonly status: Status;
  readonly story: string;
  readonly organisation: string;
  readonly period: {
    readonly label: string;
    readonly fromBce: number;
    readonly toBce: number;
    readonly status: Status;
    readonly note: string;
  };
  readonly soils: string;
  readonly pits: readonly Pit[];
}

/** A value of an attribute, with the words a tray and a reason need. */
export interface Term {
  readonly id: string;
  readonly label: string;
  /** Under the tray's name: "struck with a stone or antler". */
  readonly hint: string;
  /** What in the hand tells it: "Rings spread from one end, where the blow fell." */
  readonly sign: string;
  readonly status: Status;
  readonly source: string;
}

/** A type of object, with the words that name it and those that describe it without giving the answer away. */
export interface ObjectType extends Term {
  /** For a sort: "Smooth stone, one curved edge". */
  readonly plain: string;
  /** Where the sign of an attribute's value would mislead for this type, its own sign. */
  readonly signs: Readonly<Partial<Record<Attribute, string>>>;
  /** Least and greatest share of the bounding box that such a thing fills; null where not known. */
  readonly shapeFactor: { readonly least: number; readonly greatest: number; readonly status: Status } | null;
}

export interface AttributeWords {
  readonly id: Attribute;
  readonly label: string;
  readonly question: string;
  readonly values: readonly Term[];
}

export interface Material extends Term {
  /** A rock, not bone, wood, clay or metal. */
  readonly isRock: boolean;
  readonly densityGPerCm3: { readonly value: number; readonly status: Status } | null;
}

export interface Vocabulary {
  readonly attributes: readonly AttributeWords[];
  readonly objectTypes: readonly ObjectType[];
  readonly materials: readonly Material[];
}

/** Where a figure or a fact comes from. */
export interface Source {
  readonly id: string;
  readonly citation: string;
  readonly status: Status;
  /** What in the product rests on it. */
  readonly usedFor: string;
}

/** What a band can be asked: limits for the checks, with how each is known. */
export interface BandLimits {
  readonly band: Band;
  readonly label: string;
  readonly minutesPerActivity: number;
  readonly minutesPerSitting: number;
  readonly trays: number;
  readonly finds: number;
  readonly secondsPerFind: number;
  readonly readsAlone: boolean;
  /** The highest Flesch–Kincaid grade of what is read alone; null where an adult reads, or nothing is said. */
  readonly readingGradeMost: number | null;
  readonly wordsPerSentence: number | null;
  readonly status: Status;
}

/** All that lessons point to. Plain data, read once and handed in. */
export interface Library {
  readonly sites: readonly Site[];
  readonly vocabulary: Vocabulary;
  readonly bands: readonly BandLimits[];
  readonly sources: readonly Source[];
  readonly curricula: Curricula;
  /** What the making model works from; null where there are no figures, or where they cannot be read. */
  readonly making: MakingEvidence | null;
  /** Stretches of time a child can hold, rising; [] where there are none. */
  readonly comparisons: readonly Comparison[];
  /** Hazards, controls, ratios, stations, refusals. */
  readonly safety: SafetyRules;
  /** The words of the trade; [] where there are none. */
  readonly glossary: readonly GlossaryWord[];
  /** What teacher notes are made from, beside the lesson. */
  readonly notes: NotesRows;
}
