import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { cruise, type ICruiseResult } from 'dependency-cruiser';
import { expect, test } from 'vitest';
import config from '../../.dependency-cruiser.mjs';
import { home } from '../demo.ts';

async function cruised(baseDir: string): Promise<ICruiseResult> {
  const { output } = await cruise(['shared', 'src'], {
    ...config.options,
    tsConfig: { fileName: join(home, 'tsconfig.json') },
    baseDir,
    validate: true,
    ruleSet: { forbidden: config.forbidden ?? [] },
  });
  if (typeof output === 'string') throw new Error('a report was written in place of a result');
  return output;
}

const told = ({ summary }: ICruiseResult): readonly string[] =>
  summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} → ${to}`);

test('the arrows point one way: more than fifty modules, and no breach', async () => {
  const result = await cruised(home);
  // With a compiler it does not understand the cruiser sees 0 modules and calls them clean.
  expect(result.summary.totalCruised).toBeGreaterThan(50);
  expect(told(result)).toEqual([]);
});

/** One file that breaks each rule, and what it reaches for. */
const breaches = [
  { rule: 'no-circle', from: 'shared/lesson/a.ts', to: 'shared/lesson/b.ts', back: true },
  { rule: 'shared-stands-alone', from: 'shared/words/a.ts', to: 'src/loaders/b.ts' },
  { rule: 'shared-has-no-machine', from: 'shared/lesson/a.ts', to: 'node:fs' },
  { rule: 'kinds-are-strangers', from: 'shared/activities/sort/a.ts', to: 'shared/activities/order/b.ts' },
  { rule: 'only-the-registry-knows-kinds', from: 'shared/compile/a.ts', to: 'shared/activities/sort/b.ts' },
  { rule: 'sciences-below-kinds', from: 'shared/agreement/a.ts', to: 'shared/activities/index.ts' },
  { rule: 'making-asks-estimating-by-its-index', from: 'shared/making/a.ts', to: 'shared/estimating/b.ts' },
  { rule: 'chance-is-the-floor', from: 'shared/chance/a.ts', to: 'shared/agreement/b.ts' },
  { rule: 'words-are-plain', from: 'shared/words/a.ts', to: 'shared/compile/b.ts' },
  { rule: 'stores-below-islands', from: 'src/stores/a.ts', to: 'src/islands/b.ts' },
  { rule: 'islands-have-no-machine', from: 'src/islands/a.ts', to: 'src/loaders/b.ts' },
  { rule: 'islands-no-node', from: 'src/islands/a.ts', to: 'node:path' },
  { rule: 'loaders-below-screens', from: 'src/loaders/a.ts', to: 'src/islands/b.ts' },
];

test('every rule has a planted breach here', () => {
  const named = new Set(breaches.map(({ rule }) => rule));
  expect((config.forbidden ?? []).map(({ name }) => name ?? '').filter((name) => !named.has(name))).toEqual(
    [],
  );
});

test.each(breaches)('a breach of $rule is reported', async ({ rule, from, to, back }) => {
  const folder = mkdtempSync(join(tmpdir(), 'pitlore-graph-'));
  const plant = (path: string, text: string): void => {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  };
  mkdirSync(join(folder, 'src'));
  mkdirSync(join(folder, 'shared'));
  const up = '../'.repeat(from.split('/').length - 1);
  const isCore = to.startsWith('node:');
  plant(from, `import * as other from '${isCore ? to : up + to}';\nexport const here = other;\n`);
  if (!isCore) plant(to, back === true ? `export * from '${up}${from}';\n` : 'export const there = 1;\n');
  expect((await cruised(folder)).summary.violations.map((violation) => violation.rule.name)).toContain(rule);
  rmSync(folder, { recursive: true });
});
