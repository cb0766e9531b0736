import * as z from 'zod';
import {
  EDGE_CLASSES,
  EXPOSURES,
  FLAGS,
  PARTS_BEYOND,
  SETTINGS,
  STATION_KINDS,
  type SafetyRules,
  type Situation,
  type StationUse,
} from '../safety/index.ts';
import { nearest } from '../lesson/nearest.ts';
import type { Fault } from '../lesson/problem.ts';
import { safetyProblems } from '../words/en/safety-problems.ts';
import { readYamlFile, type ReadFile } from './read-yaml-file.ts';

/** `knappingDemo` is read as `knapping-demo`: both ways of writing are met. */
const kebab = (word: string): string => word.replaceAll(/([a-z0-9])([A-Z])/g, '$1-$2').toLowerCase();
const either = <Word extends string>(words: readonly [Word, ...Word[]]) =>
  z.preprocess((value) => (typeof value === 'string' ? kebab(value) : value), z.enum(words));

const count = z.int().min(0).max(100_000);
const metres = z.number().min(0).max(1000);
const flag = z.boolean().optional();

const station = z.strictObject({
  kind: either(STATION_KINDS),
  childrenAtOnce: count,
  edgeClass: z.enum(EDGE_CLASSES).optional(),
  exposure: either(EXPOSURES).optional(),
  finds: z.array(z.string().transform(kebab)).optional(),
  spectatorsAtMetres: metres.optional(),
  plantWorkingOnRoute: flag,
  metresToUnbarrieredEdge: metres.optional(),
  dry: flag,
  poweredTool: flag,
  rawMaterials: flag,
  pupilsFlake: flag,
  pupilsSwing: flag,
  pupilsGrind: flag,
  pupilsHeat: flag,
  pupilsThrow: flag,
});

const situationFile = z.strictObject({
  children: count,
  youngest: z.int().min(0).max(16),
  frameworks: z.array(z.string()),
  localChildrenPerAdult: z.int().min(1).max(100).optional(),
  oneToOneAdults: count.optional(),
  setting: either(SETTINGS),
  flags: z.array(either(FLAGS)).optional(),
  kinds: z.array(z.string()).optional(),
  stations: z.array(station),
  openDay: flag,
  attendance: count.optional(),
  parts: z.array(z.enum(PARTS_BEYOND)).optional(),
  supervisorsAvailable: count.optional(),
  practitionersAvailable: count.optional(),
  firstAiders: count.optional(),
  eyeSets: count.optional(),
  edgedLetter: flag,
  handwashing: flag,
  kitTicked: flag,
  asksForPersonalData: flag,
});

/** Leaves out the keys nobody wrote. */
const written = (use: z.output<typeof station>): StationUse =>
  // What is left holds no undefined value.
  Object.fromEntries(Object.entries(use).filter(([, value]) => value !== undefined)) as unknown as StationUse;

/** Frameworks the rules know, and a figure where the local one is chosen. */
function frameworkFaults(
  { frameworks, localChildrenPerAdult }: z.output<typeof situationFile>,
  rules: SafetyRules,
): readonly Fault[] {
  const known = [...new Set(rules.ratios.map(({ framework }) => framework))];
  const unknown = frameworks.flatMap((framework, index): readonly Fault[] => {
    if (known.includes(framework)) return [];
    const near = nearest(framework, known);
    return [
      {
        code: 'word-unknown',
        grade: 'error',
        path: ['frameworks', index],
        ...safetyProblems.frameworkUnknown(framework, near, known),
        ...(near === null ? {} : { replacement: near }),
      },
    ];
  });
  return frameworks.includes('local') && localChildrenPerAdult === undefined
    ? [
        ...unknown,
        { code: 'key-missing', grade: 'error', path: ['frameworks'], ...safetyProblems.localMissing() },
      ]
    : unknown;
}

/** Reads a situation: who comes, where, what runs together, and who is there to see to it. */
export function readSituation(file: string, text: string, rules: SafetyRules): ReadFile<Situation> {
  const read = readYamlFile(file, text, situationFile);
  if (read.value === null) return { ...read, value: null };
  const said = read.value;
  const faults = frameworkFaults(said, rules);
  if (faults.length > 0) return { ...read, value: null, problems: [...read.problems, ...read.place(faults)] };
  const value: Situation = {
    children: said.children,
    youngest: said.youngest,
    frameworks: said.frameworks,
    localChildrenPerAdult: said.localChildrenPerAdult ?? null,
    oneToOneAdults: said.oneToOneAdults ?? 0,
    setting: said.setting,
    flags: said.flags ?? [],
    kinds: said.kinds ?? [],
    stations: said.stations.map(written),
    openDay: said.openDay ?? false,
    attendance: said.attendance ?? 0,
    parts: said.parts ?? [],
    supervisorsAvailable: said.supervisorsAvailable ?? null,
    practitionersAvailable: said.practitionersAvailable ?? null,
    // Where a file says nothing: one first aider, and glasses for the children only.
    firstAiders: said.firstAiders ?? 1,
    eyeSets: said.eyeSets ?? said.children,
    edgedLetter: said.edgedLetter ?? true,
    handwashing: said.handwashing ?? true,
    kitTicked: said.kitTicked ?? true,
    asksForPersonalData: said.asksForPersonalData ?? false,
  };
  return { ...read, value };
}
