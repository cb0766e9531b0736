import type { Framework } from '../curriculum/index.ts';
import { hasErrors, type Fault } from '../lesson/problem.ts';
import type { FrameworkWords } from '../library/read-framework.ts';
import { readYamlFile, type ReadFile } from '../library/read-yaml-file.ts';
import { caseWords } from '../words/en/case.ts';
import { quoted } from '../words/en/problems.ts';
import { outcomeOf } from './item-outcome.ts';
import { oursOf, ownStage, stageOf } from './item-stage.ts';
import { itemTree } from './item-tree.ts';
import { packageHead } from './package-head.ts';
import { packageSchema } from './package-schema.ts';
import { pointFaults } from './point-faults.ts';

type Stage = Framework['stages'][number];

/** Stages in the order they are met, each once. */
const eachOnce = (stages: readonly Stage[]): readonly Stage[] => [
  ...new Map(stages.map((stage) => [stage.id, stage])).values(),
];

/**
 * Reads a CASE package (JSON) as a framework. One of ours comes back as it was. Of anyone else's, each item with
 * nothing below it is an outcome, its ages are those of its US grades, and its words are the publisher's, which is told
 * as a caution; items whose ages are not known are left out and told. Value null where the file has errors.
 */
export function readCasePackage(file: string, text: string, known: FrameworkWords): ReadFile<Framework> {
  const read = readYamlFile(file, text, packageSchema);
  if (read.value === null) return { ...read, value: null };
  const { CFDocument: document, CFItems: items = [] } = read.value;
  const tree = itemTree(read.value);
  const leaves = items
    .map((item, index) => ({ item, index }))
    .filter(({ item }) => ownStage(item) === null && (oursOf(item) !== null || tree.isLeaf(item.identifier)));
  const staged = leaves.map(({ item, index }) => ({ item, index, stage: stageOf(item, tree) }));
  const aged = staged.flatMap(({ item, index, stage }) => (stage === null ? [] : [{ item, index, stage }]));
  const outcomes = aged.map(({ item, stage }) => outcomeOf(item, stage, document.subject ?? []));
  const repeated = outcomes.flatMap(({ id }, at): readonly Fault[] => {
    const index = aged[at]?.index ?? 0;
    if (outcomes.findIndex((other) => other.id === id) === at) return [];
    const told = caseWords.outcomeRepeated(quoted(id));
    return [{ code: 'id-repeated', grade: 'error', path: ['CFItems', index], ...told }];
  });
  const ageless = staged.filter(({ stage }) => stage === null);
  const [first] = ageless;
  const anothers = aged.filter(({ item }) => oursOf(item) === null).length;
  const head = packageHead(read.value, anothers > 0);
  const caution = (path: Fault['path'], told: Pick<Fault, 'expected' | 'received' | 'mend'>): Fault => ({
    code: 'value-unfit',
    grade: 'caution',
    path,
    ...told,
  });
  const faults: readonly Fault[] = [
    ...tree.faults,
    ...repeated,
    ...aged.flatMap(({ item, index }) => pointFaults(item, index, known, head.sources)),
    ...(first === undefined
      ? []
      : [
          caution(
            ['CFItems', first.index],
            caseWords.ageless(ageless.length, quoted(first.item.fullStatement)),
          ),
        ]),
    ...(anothers === 0 ? [] : [caution(['CFDocument', 'title'], caseWords.anothersWords(anothers))]),
    ...(outcomes.length > 0
      ? []
      : [{ ...caution(['CFItems'], caseWords.noOutcomes()), grade: 'error' } as const]),
  ];
  const stages = eachOnce([
    ...items.map(ownStage).filter((stage) => stage !== null),
    ...aged.map(({ stage }) => stage),
  ]);
  return {
    ...read,
    value: hasErrors(faults) ? null : { ...head, stages, outcomes },
    problems: [...read.problems, ...read.place(faults)],
  };
}
