import * as z from 'zod';
import { CLAIM_GRADES, foldCode, type Framework, type Outcome } from '../curriculum/index.ts';
import type { Fault } from '../lesson/problem.ts';
import { nearest } from '../lesson/nearest.ts';
import { shapeWords } from '../words/en/problems.ts';
import { frameworkWords } from '../words/en/claim-problems.ts';
import { readYamlFile, type ReadFile } from './read-yaml-file.ts';
import { STATUSES } from './status.ts';

const outcome = z
  .strictObject({
    id: z.string().min(1),
    code: z.string().optional(),
    stage: z.string(),
    subject: z.string(),
    summary: z.string().min(1).max(200),
    status: z.enum(STATUSES),
    source: z.strictObject({ ref: z.string(), at: z.string() }),
    never: z.string().optional(),
    evidence: z
      .array(z.strictObject({ kind: z.string(), when: z.string(), grade: z.enum(CLAIM_GRADES) }))
      .optional(),
  })
  .transform(({ code, never, evidence, ...rest }): Outcome => ({
    ...rest,
    code: code ?? null,
    never: never ?? null,
    evidence: evidence ?? [],
  }));

const frameworkFile = z
  .strictObject({
    id: z.string().regex(/^[a-z][a-z0-9-]*$/, 'small letters, digits and hyphens'),
    name: z.string().min(1),
    country: z.string(),
    publisher: z.string(),
    version: z.string(),
    licence: z.string(),
    note: z.string(),
    'ages-known': z.string(),
    stages: z.array(
      z.strictObject({
        id: z.string(),
        label: z.string(),
        from: z.int().min(3).max(19),
        to: z.int().min(4).max(20),
      }),
    ),
    sources: z.array(
      z
        .strictObject({ id: z.string(), citation: z.string(), seen: z.string(), url: z.url().optional() })
        .transform(({ url, ...source }) => ({ ...source, url: url ?? null })),
    ),
    outcomes: z.array(outcome),
  })
  .transform(({ 'ages-known': agesKnown, ...framework }): Framework => ({ ...framework, agesKnown }));

/** What an outcome may point to outside its own file. */
export interface FrameworkWords {
  readonly kinds: readonly string[];
  readonly conditions: readonly string[];
}

function crossFaults(framework: Framework, known: FrameworkWords): readonly Fault[] {
  const unknown = (written: string, words: readonly string[], path: Fault['path']): readonly Fault[] => {
    if (words.includes(written)) return [];
    const near = nearest(written, words);
    const told = shapeWords.unknownWord(written, near, words);
    return [
      {
        code: 'word-unknown',
        grade: 'error',
        path,
        ...told,
        ...(near === null ? {} : { replacement: near }),
      },
    ];
  };
  const stages = framework.stages.map(({ id }) => id);
  const sources = framework.sources.map(({ id }) => id);
  const seen = new Set<string>();
  const ages = framework.stages.flatMap(({ from, to }, index): readonly Fault[] =>
    from < to
      ? []
      : [
          {
            code: 'value-unfit',
            grade: 'error',
            path: ['stages', index, 'to'],
            ...frameworkWords.ages(from, to),
          },
        ],
  );
  const rows = framework.outcomes.flatMap((row, index) => {
    const path = ['outcomes', index];
    // As claims look it up: hyphens and capitals do not tell two ids apart.
    const isRepeated = seen.has(foldCode(row.id));
    seen.add(foldCode(row.id));
    return [
      ...(isRepeated
        ? [
            {
              code: 'id-repeated',
              grade: 'error',
              path: [...path, 'id'],
              ...frameworkWords.repeated(row.id),
            } as const,
          ]
        : []),
      ...unknown(row.stage, stages, [...path, 'stage']),
      ...unknown(row.source.ref, sources, [...path, 'source', 'ref']),
      ...row.evidence.flatMap(({ kind, when }, place) => [
        ...unknown(kind, known.kinds, [...path, 'evidence', place, 'kind']),
        ...unknown(when, known.conditions, [...path, 'evidence', place, 'when']),
      ]),
    ];
  });
  return [...ages, ...rows];
}

/** Reads a framework file: the product's own, or one a lead adds. */
export function readFramework(file: string, text: string, known: FrameworkWords): ReadFile<Framework> {
  const read = readYamlFile(file, text, frameworkFile);
  if (read.value === null) return read;
  const faults = crossFaults(read.value, known);
  return {
    ...read,
    value: faults.length > 0 ? null : read.value,
    problems: [...read.problems, ...read.place(faults)],
  };
}
