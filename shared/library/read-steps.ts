import * as z from 'zod';
import { hasErrors, nearest, type Fault, type Problem } from '../lesson/index.ts';
import { readSteps as readPrecedence, type ReadSteps, type Step } from '../ordering/index.ts';
import { stepWords } from '../words/en/table-problems.ts';
import { readYamlFile } from './read-yaml-file.ts';

const stepId = z.union([z.string(), z.number()]).transform(String);

const stepsFile = z.strictObject({
  steps: z.array(
    z.strictObject({
      id: stepId,
      mustFollow: z.array(stepId).default([]),
      label: z.string().optional(),
      why: z.string().optional(),
    }),
  ),
});

/** A file of steps: what comes before what, or a cycle; both null where the file has errors. */
export type StepsFile =
  | (ReadSteps & { readonly steps: readonly Step[]; readonly problems: readonly Problem[] })
  | { readonly steps: null; readonly problems: readonly Problem[] };

/**
 * Reads a list of steps. A circle among them is told as a caution at the step it begins with, since it is also the answer.
 *
 * @example readStepsFile('s.yaml', 'steps: [{ id: find }, { id: shape, mustFollow: [find] }]').steps?.length // 2
 */
export function readStepsFile(file: string, text: string): StepsFile {
  const { value, problems, place } = readYamlFile(file, text, stepsFile);
  if (value === null) return { steps: null, problems };
  const steps = value.steps.map(({ id, mustFollow }) => ({ id, mustFollow }));
  const faults = stepFaults(steps);
  if (hasErrors(faults)) return { steps: null, problems: [...problems, ...place(faults)] };
  const read = readPrecedence(steps);
  if (read.cycle === null) return { steps, problems, ...read };
  const path = ['steps', steps.findIndex(({ id }) => id === read.cycle[0]), 'id'];
  const circle: Fault = { code: 'steps-circular', grade: 'caution', path, ...stepWords.circle(read.cycle) };
  return { steps, problems: [...problems, ...place([circle])], ...read };
}

function stepFaults(steps: readonly Step[]): readonly Fault[] {
  const known = [...new Set(steps.map(({ id }) => id))];
  return steps.flatMap(({ id, mustFollow }, index): Fault[] => {
    const isRepeated = steps.findIndex((other) => other.id === id) < index;
    const unknown = [...mustFollow.entries()].filter(([, before]) => !known.includes(before));
    return [
      ...(isRepeated
        ? [
            {
              code: 'id-repeated',
              grade: 'error',
              path: ['steps', index, 'id'],
              ...stepWords.repeated(id),
            } as const,
          ]
        : []),
      ...unknown.map(([place, before]): Fault => {
        const near = nearest(before, known);
        return {
          code: 'word-unknown',
          grade: 'error',
          path: ['steps', index, 'mustFollow', place],
          ...stepWords.unknown(before, near, known),
          ...(near === null ? {} : { replacement: near }),
        };
      }),
    ];
  });
}
