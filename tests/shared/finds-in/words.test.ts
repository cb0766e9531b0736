import { expect, test } from 'vitest';
import { demoLibrary } from '../../demo.ts';
import { demoWords } from './demo-words.ts';

const { vocabulary } = demoLibrary;
const idsOf = (id: string): readonly string[] =>
  vocabulary.attributes.find((attribute) => attribute.id === id)?.values.map((value) => value.id) ?? [];

test.each([
  { part: 'object-types', attribute: 'object-type' },
  { part: 'materials', attribute: 'material' },
  { part: 'ages', attribute: 'age' },
  { part: 'states', attribute: 'state' },
] as const)('every meaning of $part is a value of the vocabulary', ({ part, attribute }) => {
  const meant = demoWords[part].flatMap(({ means }) => means);
  expect(meant.filter((id) => !idsOf(attribute).includes(id))).toEqual([]);
});

test('every type of the vocabulary has what is usual for it, in words the vocabulary has', () => {
  expect(demoWords.types.map(({ type }) => type).toSorted()).toEqual(
    vocabulary.objectTypes.map(({ id }) => id).toSorted(),
  );
  for (const usual of demoWords.types) {
    expect(idsOf('made-by')).toContain(usual['made-by']);
    expect(idsOf('used-for')).toContain(usual['used-for']);
    expect(idsOf('state')).toContain(usual.state);
    expect(usual.materials.filter((id) => !idsOf('material').includes(id))).toEqual([]);
    expect(usual.ages.filter((id) => !idsOf('age').includes(id))).toEqual([]);
    const [least, most] = usual['length-mm'];
    expect(usual['size-mm'][0]).toBeGreaterThan(least);
    expect(usual['size-mm'][0]).toBeLessThan(most);
  }
});

test('the demo’s own finds are usual for their type', () => {
  for (const find of demoLibrary.sites.flatMap(({ pits }) => pits).flatMap(({ finds }) => finds)) {
    const usual = demoWords.types.find(({ type }) => type === find.attributes['object-type']);
    expect({ find: find.id, materials: usual?.materials }).toEqual({
      find: find.id,
      materials: expect.arrayContaining([find.attributes.material]),
    });
    expect({ find: find.id, ages: usual?.ages }).toEqual({
      find: find.id,
      ages: expect.arrayContaining([find.attributes.age]),
    });
  }
});

test('no word stands for two things for certain in one language', () => {
  for (const part of ['object-types', 'materials', 'ages', 'states'] as const) {
    const seen = new Map<string, string>();
    for (const { language, words, means, sure } of demoWords[part]) {
      for (const word of words) {
        const key = `${language}:${word}`;
        const meaning = `${sure} ${means.join(' ')}`;
        expect({ part, word, meaning: seen.get(key) ?? meaning }).toEqual({ part, word, meaning });
        seen.set(key, meaning);
      }
    }
  }
});
