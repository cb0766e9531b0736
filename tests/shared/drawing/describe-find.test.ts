import { describe, expect, test } from 'vitest';
import { describeFind } from '../../../shared/drawing/index.ts';
import { madeFinds } from './made-finds.ts';
import { PITS } from './pits.ts';

/** Words a sort may ask for: types, materials, making, use, state, age. None may be heard before the answer. */
const ANSWERS =
  /flak|blade|scrap|serrat|\barrow|core\b|hammer|axe|rough-?out|fragment|burnt|burn|antler|\bpick|\bpin\b|pig|jaw|cattle|cow|groove|\bware|pot\b|pottery|sherd|quern|polish|chalk|cord\b|cordage|string|rope|charcoal|wood|hazel|nut|pebble|nail|iron|bottle|glass|plastic|\btag|brick|clay|pipe|bone|flint|stone|quartz|shell\b|fibre|fired|ground\b|grind|carv|\bcut|twist|mould|machine|natural|broken|worn|whole|modern|earlier|neolithic|tool\b|food|dig|fasten/i;

describe('words for a drawing', () => {
  test('the blind sentence gives no answer away, for every find of nine pits and every type', () => {
    const told = [...PITS.flatMap(({ finds }) => finds), ...madeFinds(64)]
      .filter(({ objectType }) => objectType !== 'some-new-thing')
      .map((find) => describeFind(find).blind)
      .filter((text) => ANSWERS.test(text))
      .map((text) => `${ANSWERS.exec(text)?.[0]}: ${text}`);
    expect(told).toEqual([]);
  });

  test('short says what and how long; long adds size, state and what shows', () => {
    const jaw = PITS[2]?.finds[0];
    if (jaw === undefined) throw new Error('pit 3 has finds');
    const words = describeFind(jaw);
    expect(words.short).toBe('Half of a pig’s lower jaw, left side, 118 mm long.');
    expect(words.long).toMatch(
      /^Half of a pig’s lower jaw, left side, broken, 118 by 49 by 24 mm\. Low and curved/,
    );
    expect(words.blind).toMatch(/^118 by 49 by 24 mm\. Low and curved/);
  });

  test('two types are never told in the same words', () => {
    const shown = new Map<string, string>();
    for (const find of madeFinds(31)) {
      const heard = describeFind({ ...find, lengthMm: 1, widthMm: 1, thicknessMm: 1, count: 1 }).blind;
      expect(shown.get(heard)).toBeUndefined();
      shown.set(heard, find.objectType);
    }
  });
});
