import { expect, test } from 'vitest';
import { kindNames, starterOf } from '../../../shared/activities/index.ts';
import { addPart, outline, writeBlock } from '../../../shared/bench/index.ts';
import { compileLesson } from '../../../shared/compile/index.ts';
import { hasErrors } from '../../../shared/lesson/index.ts';
import { demoLibrary } from '../../demo.ts';

const head = '---\ntitle: A visit\nsite: wendle-marsh\nbands: [7-9]\nminutes: 40\n---\n';

test.each(kindNames)('a new block of %s says what was meant and compiles as it stands', (kind) => {
  const [site] = demoLibrary.sites;
  if (site === undefined) throw new Error('the demo has no site');
  const values = starterOf(kind, site);
  const text = addPart(head, 0, writeBlock(kind, values));
  const [part] = outline(text).parts;
  expect(part?.part === 'block' ? part.data : null).toEqual(values);
  const { problems, plan } = compileLesson('a.md', text, demoLibrary, 'a');
  expect(hasErrors(problems) ? problems.map(({ mend }) => mend) : []).toEqual([]);
  expect(plan?.activities.map((activity) => activity.kind)).toEqual([kind]);
});
