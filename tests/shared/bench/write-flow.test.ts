import * as fc from 'fast-check';
import { parse } from 'yaml';
import { expect, test } from 'vitest';
import { outline, writeBlock } from '../../../shared/bench/index.ts';

test('any values of a block are read back as they were written', () => {
  const word = fc.string({ unit: 'grapheme', maxLength: 20 });
  const value = fc.oneof(
    word,
    fc.integer(),
    fc.boolean(),
    fc.array(word),
    fc.array(fc.record({ name: word })),
  );
  fc.assert(
    fc.property(fc.dictionary(fc.stringMatching(/^[a-z][a-z-]{0,8}$/), value, { minKeys: 1 }), (values) => {
      const block = writeBlock('sort', values);
      const yaml = block.split('\n').slice(1, -1).join('\n');
      expect(parse(yaml)).toEqual({ ...values });
      const [part] = outline(`---\na: 1\n---\n${block}\n`).parts;
      expect(part?.part === 'block' ? part.yaml.replace(/\n$/, '') : null).toBe(yaml);
    }),
    { numRuns: 1000, seed: 3, examples: [[{ a: '\u00a0' }], [{ a: ['\ufeff', 'x\u3000'] }]] },
  );
});
