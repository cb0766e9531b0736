import { expect, test } from 'vitest';
import { compileLesson, standingHazards, typesShown, type Plan } from '../../../shared/compile/index.ts';
import { lessonSituation, plainSituation, safetyReport } from '../../../shared/safety/index.ts';
import { demoLessons, demoLibrary } from '../../demo.ts';

const rules = demoLibrary.safety;

function planOf(finds: string, prose: string, bands = '[7-9]'): Plan {
  const text = `---
title: A lesson
site: wendle-marsh
bands: ${bands}
minutes: 20
---
${prose}

\`\`\`sort
title: Which is which?
finds: ${finds}
by: material
trays: ours
minutes: 10
\`\`\`
`;
  const { plan, problems } = compileLesson('a-lesson.md', text, demoLibrary, 'a');
  if (plan === null) throw new Error(problems.map(({ expected }) => expected).join('; '));
  return plan;
}

/** Blunt things only: chalk, antler, pottery. */
const blunt = demoLibrary.sites
  .flatMap(({ pits }) => pits.flatMap(({ finds }) => finds))
  .filter(({ attributes }) => rules.edgeOfType[attributes['object-type']] === 'E0')
  .filter(({ attributes }) =>
    ['chalk', 'antler', 'pottery', 'charcoal', 'bone'].includes(attributes.material),
  );

const ids = (plan: Plan): readonly string[] => standingHazards(rules, plan).map(({ id }) => id);
const named = (count: number): string =>
  `[${blunt
    .slice(0, count)
    .map(({ id }) => id)
    .join(', ')}]`;

test('blunt things and quiet words bring no standing caution', () => {
  expect(blunt.length).toBeGreaterThan(3);
  expect(ids(planOf(named(4), 'Look at each thing.'))).toEqual([]);
});

test.each([
  { prose: 'Once people knew how to knap.', hazard: 'knapping-dust' },
  { prose: 'They sat grinding for days.', hazard: 'grinding-dust' },
  { prose: 'It was chopped down.', hazard: 'swung-tools' },
  { prose: 'They made a fire and glued it with birch tar.', hazard: 'hot-pitch' },
  { prose: 'This flint came from far away.', hazard: 'sharp-edges' },
])('$prose: words alone bring the caution ($hazard)', ({ prose, hazard }) => {
  expect(ids(planOf(named(4), prose))).toContain(hazard);
});

test('a single edge among blunt things brings the caution', () => {
  const finds = named(4).replace(']', ', P7-165]');
  expect(ids(planOf(finds, 'Look at each thing.'))).toContain('sharp-edges');
});

test('edges drawn are a hazard of the lesson, and refuse nothing at any age', () => {
  for (const { id, file, text } of demoLessons) {
    const { plan } = compileLesson(file, text, demoLibrary, id);
    if (plan === null) throw new Error(`${id} does not compile`);
    const group = plainSituation(30, 4, ['england-visits'], 'classroom');
    const report = safetyReport(rules, lessonSituation(rules, group, [], typesShown(plan)));
    expect(report.refusals, id).toEqual([]);
    expect(ids(plan), id).toContain('sharp-edges');
    const hasEdge = typesShown(plan).some((type) => rules.edgeOfType[type] !== 'E0');
    expect(
      report.hazards.some((hazard) => hazard.id === 'sharp-edges'),
      id,
    ).toBe(hasEdge);
  }
});
