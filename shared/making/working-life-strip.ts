import { reckonAxe } from './axe.ts';
import type { CoefficientId, MakingFigures } from './figures.ts';
import { finishHours, rubbingHours } from './grinding.ts';
import type { Reckoning } from './reckoning.ts';
import type { Head } from './resolve.ts';
import { notShaped, shapingHours } from './shaping.ts';
import { groundVolumeCm3 } from './size.ts';
import { mining } from './supplying.ts';

/** The stretches of the strip, in the order of making; each has its own pattern when drawn. */
const STRETCHES = [
  'find-nodule',
  'mine',
  'test-nodule',
  'rough-out',
  'thin',
  'trim',
  'peck',
  'grind',
  'polish',
  'cut-haft-wood',
  'shape-haft',
  'cut-socket',
  'fit',
  'bind',
] as const;
export type Stretch = (typeof STRETCHES)[number];

/** One stretch of work on the strip, to scale. */
export interface StripSegment {
  readonly id: Stretch;
  readonly branch: 'stone' | 'blade' | 'haft';
  readonly label: string;
  readonly fromHours: number;
  readonly toHours: number;
  readonly hours: number;
  /** Of the whole strip, 0 to 1. */
  readonly share: number;
}

export interface WorkingLifeStrip {
  readonly segments: readonly StripSegment[];
  /** The branches as blocks, for a strip too short to show minutes. */
  readonly branches: readonly {
    readonly branch: StripSegment['branch'];
    readonly fromHours: number;
    readonly toHours: number;
  }[];
  /** Length of the strip: the sum of the middles, which is a little less than the middle of the sum. */
  readonly hours: number;
  /** Marks along it, in hours from 0, evenly spaced: 5 to 12 of them. */
  readonly marks: readonly number[];
  /** What the whole takes, with its spread, to be told beside the strip. */
  readonly total: Reckoning;
  /** How many times as long the grinding is as the shaping; null when either is nothing. */
  readonly grindingPerShaping: number | null;
  readonly without: readonly string[];
}

const LABELS: { readonly [Id in Stretch]: readonly [branch: StripSegment['branch'], label: string] } = {
  'find-nodule': ['stone', 'Finding a nodule'],
  mine: ['stone', 'Mining the flint'],
  'test-nodule': ['stone', 'Testing it'],
  'rough-out': ['blade', 'Roughing out'],
  thin: ['blade', 'Thinning'],
  trim: ['blade', 'Trimming'],
  peck: ['blade', 'Pecking to shape'],
  grind: ['blade', 'Grinding'],
  polish: ['blade', 'Polishing'],
  'cut-haft-wood': ['haft', 'Cutting wood for the haft'],
  'shape-haft': ['haft', 'Shaping the handle'],
  'cut-socket': ['haft', 'Cutting the socket'],
  fit: ['haft', 'Fitting the blade'],
  bind: ['haft', 'Binding or gluing'],
};

/** Marks at 1, 2 or 5 times a power of ten hours, from 0 to the end. */
export function hourMarks(hours: number): number[] {
  if (!(hours > 0)) return [0];
  const rough = hours / 10;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = power * ([1, 2, 5].find((nice) => nice * power >= rough) ?? 10);
  return Array.from({ length: Math.floor(hours / step + 1e-9) + 1 }, (_, index) => index * step);
}

/** Hours of work of each stretch, at its middle. */
function hoursOf(figures: MakingFigures, head: Head): { readonly [Id in Stretch]: number } {
  const middle = (id: CoefficientId): number => figures.coefficients[id].middle;
  const shaping = shapingHours(figures, head).middle;
  const flaked = head.stone.shapedBy === 'flaking';
  const knapped = (share: CoefficientId): number => (flaked ? shaping * middle(share) : 0);
  const hafted = (share: CoefficientId): number => middle('haft-hours') * middle(share);
  const atTheStone = middle('session-factor') * head.grinder.people;
  return {
    'find-nodule': middle('find-hours'),
    mine: mining(figures, head).middle,
    'test-nodule': middle('test-minutes') / 60,
    'rough-out': knapped('knap-roughout-share'),
    thin: knapped('knap-thin-share'),
    trim: knapped('knap-trim-share'),
    peck: flaked ? 0 : shaping,
    grind: atTheStone * rubbingHours(figures, head, groundVolumeCm3(figures, head)),
    polish: atTheStone * finishHours(figures, head),
    'cut-haft-wood': hafted('haft-share-cut'),
    'shape-haft': hafted('haft-share-shape'),
    'cut-socket': hafted('haft-share-socket'),
    fit: hafted('haft-share-fit'),
    bind: hafted('haft-share-bind'),
  };
}

/**
 * The making of one axe as a strip of time to scale: minutes of knapping against hours of grinding. Stretches of no
 * time are left out.
 *
 * Blade and haft could be worked side by side; the strip lays the work of one adult end to end.
 * @example workingLifeStrip(figures, head).grindingPerShaping // about 40 for a small flint axe
 */
export function workingLifeStrip(figures: MakingFigures, head: Head): WorkingLifeStrip {
  const hours = hoursOf(figures, head);
  const whole = STRETCHES.reduce((sum, id) => sum + hours[id], 0);
  const segments: StripSegment[] = [];
  let soFar = 0;
  for (const id of STRETCHES) {
    if (hours[id] === 0) continue;
    const [branch, label] = LABELS[id];
    const toHours = soFar + hours[id];
    segments.push({
      id,
      branch,
      label,
      fromHours: soFar,
      toHours,
      hours: hours[id],
      share: hours[id] / whole,
    });
    soFar = toHours;
  }
  const branches = (['stone', 'blade', 'haft'] as const).flatMap((branch) => {
    const own = segments.filter((segment) => segment.branch === branch);
    const first = own[0];
    const last = own.at(-1);
    return first === undefined || last === undefined
      ? []
      : [{ branch, fromHours: first.fromHours, toHours: last.toHours }];
  });
  const shaping = hours['rough-out'] + hours.thin + hours.trim + hours.peck;
  const atTheStone = hours.grind + hours.polish;
  return {
    segments,
    branches,
    hours: soFar,
    marks: hourMarks(soFar),
    total: reckonAxe(figures, head),
    grindingPerShaping: shaping > 0 && atTheStone > 0 ? atTheStone / shaping : null,
    without: notShaped(head),
  };
}
