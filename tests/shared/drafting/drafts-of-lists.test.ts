import { expect, test } from 'vitest';
import { compileLesson } from '../../../shared/compile/index.ts';
import { draftVisit } from '../../../shared/drafting/index.ts';
import {
  prepareFindsIn,
  readFindsIn,
  siteHead,
  writeFindsTable,
  writeSite,
} from '../../../shared/finds-in/index.ts';
import { BANDS, readSite } from '../../../shared/library/index.ts';
import { demoLibrary } from '../../demo.ts';
import { demoWords } from '../finds-in/demo-words.ts';
import { messyList } from '../finds-in/messy-list.ts';

const { vocabulary } = demoLibrary;
const given = { vocabulary, words: demoWords, prepared: prepareFindsIn(vocabulary, demoWords) };

test('200 made lists: each draft checks clean, or says what is lacking', () => {
  let drafted = 0;
  let lacked = 0;
  for (let index = 0; index < 200; index += 1) {
    const { text: list } = messyList(String(index));
    const { finds, rows } = readFindsIn(list, given);
    const head = siteHead(`List ${index}`);
    const { value: site } = readSite(
      's.yaml',
      writeSite(head, finds),
      [{ file: 's.csv', text: writeFindsTable(finds) }],
      vocabulary,
    );
    if (site === null) throw new Error('the site cannot be read back');
    const band = BANDS[index % BANDS.length] ?? '7-9';
    const minutes = [8, 15, 30, 60][index % 4] ?? 30;
    const doubtful = rows.flatMap(({ find, questions }) =>
      find !== null && questions.length > 0 ? [find.id] : [],
    );
    const seed = String(index);
    const { text, lacking } = draftVisit(demoLibrary, site, { bands: [band], minutes, seed, doubtful });
    if (text === null) {
      lacked += 1;
      expect(lacking.length).toBeGreaterThan(0);
      continue;
    }
    drafted += 1;
    const library = { ...demoLibrary, sites: [site] };
    const { plan, problems } = compileLesson('draft.md', text, library, seed);
    expect({ index, problems }).toEqual({ index, problems: [] });
    expect(plan).not.toBeNull();
  }
  expect(drafted + lacked).toBe(200);
  expect(drafted).toBeGreaterThan(150);
});
