import type { Standing } from './standing.ts';

/** A number with its spread, unit, status and sources; low and high are null where nobody gives them. */
export interface Figure {
  readonly id: string;
  readonly label: string;
  readonly low: number | null;
  readonly middle: number;
  readonly high: number | null;
  readonly unit: string;
  readonly status: Standing;
  readonly sources: readonly string[];
  readonly note?: string;
}

/** The single figures of the model, by what they are for. */
export const COEFFICIENT_IDS = [
  'shape-factor',
  'taper-factor',
  'taper-factor-four-sided',
  'knap-base',
  'knap-exponent',
  'knap-reference-mass',
  'knap-roughout-share',
  'knap-thin-share',
  'knap-trim-share',
  'failure-point',
  'breakage-odds-factor',
  'grind-rate',
  'session-factor',
  'peck-base',
  'peck-exponent',
  'peck-reference-mass',
  'haft-hours',
  'haft-share-cut',
  'haft-share-shape',
  'haft-share-socket',
  'haft-share-fit',
  'haft-share-bind',
  'find-hours',
  'test-minutes',
  'waste-share',
  'mine-labour',
  'fell-coefficient',
  'fell-exponent',
  'fell-small-exponent',
  'fell-small-below',
  'steel-ratio',
  'resharpen-minutes',
] as const;
export type CoefficientId = (typeof COEFFICIENT_IDS)[number];

/** Log spreads between makers and circumstances when the inputs are known. */
export const SPREAD_IDS = [
  'spread-find',
  'spread-test',
  'spread-knap',
  'spread-peck',
  'spread-grind',
  'spread-haft',
  'spread-fell',
  'spread-steel-ratio',
  'spread-mine',
  'spread-resharpen',
] as const;
export type SpreadId = (typeof SPREAD_IDS)[number];

/** The inputs that are numbers; each has limits beyond which the model says nothing. */
export const MEASURES = ['lengthMm', 'widthMm', 'thicknessMm', 'diameterCm', 'stakes', 'noduleKg'] as const;
export type Measure = (typeof MEASURES)[number];

export interface Limits {
  readonly from: number;
  readonly to: number;
  readonly unit: string;
}

/** The inputs that are chosen by id, each from a table of its own. */
export const CHOICES = [
  'form',
  'stone',
  'grinder',
  'preform',
  'extent',
  'finish',
  'skill',
  'wood',
  'axe',
] as const;
export type Choice = (typeof CHOICES)[number];

interface Row {
  readonly id: string;
  readonly label: string;
  readonly note?: string;
}

export interface Stone extends Row {
  readonly shapedBy: 'flaking' | 'pecking' | 'sawing';
  readonly density: Figure;
  readonly grindFactor: Figure;
}
export interface Grinder extends Row {
  readonly people: number;
  readonly grindFactor: Figure;
}
export interface Form extends Row {
  readonly section: 'oval' | 'four-sided';
  readonly typicalMm: readonly [length: number, width: number, thickness: number];
  readonly shapeFactor: Figure;
  readonly knapFactor: Figure;
}
export interface Skill extends Row {
  readonly knapMultiplier: Figure;
  readonly blankSuccess: Figure;
  readonly fellMultiplier: Figure;
}
export interface Preform extends Row {
  readonly depthMm: Figure;
}
export interface Extent extends Row {
  readonly share: Figure;
}
export interface Finish extends Row {
  readonly hoursPer100Cm2: Figure;
}
export interface Wood extends Row {
  readonly fellFactor: Figure;
}
export interface AxeKind extends Row {
  readonly fellMultiplier: Figure;
}

/** The tables an input is chosen from, by the input's name. */
export interface Tables {
  readonly form: readonly Form[];
  readonly stone: readonly Stone[];
  readonly grinder: readonly Grinder[];
  readonly preform: readonly Preform[];
  readonly extent: readonly Extent[];
  readonly finish: readonly Finish[];
  readonly skill: readonly Skill[];
  readonly wood: readonly Wood[];
  readonly axe: readonly AxeKind[];
}

/** Everything the model works from. Plain data: handed in, never built in. */
export interface MakingFigures {
  readonly coefficients: { readonly [Id in CoefficientId]: Figure };
  readonly spreads: { readonly [Id in SpreadId]: Figure };
  readonly limits: { readonly [Name in Measure]: Limits };
  readonly defaults: { readonly [Name in Choice]: string };
  readonly tables: Tables;
}
