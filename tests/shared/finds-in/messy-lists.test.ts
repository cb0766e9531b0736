import { describe, expect, test } from 'vitest';
import {
  prepareFindsIn,
  readFindsIn,
  writeFindsTable,
  writeSite,
  siteHead,
} from '../../../shared/finds-in/index.ts';
import { readSite } from '../../../shared/library/index.ts';
import { demoLibrary } from '../../demo.ts';
import { processorMs } from '../../processor-ms.ts';
import { demoWords } from './demo-words.ts';
import { messyList } from './messy-list.ts';

const { vocabulary } = demoLibrary;
const given = { vocabulary, words: demoWords, prepared: prepareFindsIn(vocabulary, demoWords) };
const lists = Array.from({ length: 200 }, (_, index) => {
  const list = messyList(String(index));
  return { ...list, read: readFindsIn(list.text, given) };
});

describe('200 made lists, of 3 to 3,000 rows, in six sets of column names', () => {
  test('are as messy as they claim', () => {
    const rows = lists.reduce((sum, { dataRows }) => sum + dataRows, 0);
    expect(rows).toBeGreaterThan(15_000);
    expect(lists.reduce((sum, { mess }) => sum + mess.length, 0)).toBeGreaterThan(1500);
    expect(lists.filter(({ text }) => text.includes('\r\n')).length).toBeGreaterThan(50);
    expect(lists.filter(({ text }) => text.startsWith('\uFEFF')).length).toBeGreaterThan(50);
  });

  test('every row is a find, a find with questions, or left out with a reason, and the counts add up', () => {
    for (const { dataRows, seed, read } of lists) {
      const { rows, counts, finds } = read;
      expect({ seed, rows: counts.rows }).toEqual({ seed, rows: dataRows });
      expect(counts.found + counts.asked + counts.leftOut).toBe(counts.rows);
      expect(finds.length).toBe(counts.found + counts.asked - counts.waiting);
      expect(new Set(rows.map(({ row }) => row)).size).toBe(rows.length);
      for (const { outcome, questions, reason, find } of rows) {
        if (outcome === 'left-out') expect(reason).not.toBe('');
        if (outcome === 'asked') expect(questions.length).toBeGreaterThan(0);
        if (outcome === 'find') expect(find).not.toBeNull();
      }
    }
  });

  test('a row nothing was done to comes back as the find it was', () => {
    for (const { clean, seed, read } of lists) {
      const byRow = new Map(read.rows.map((row) => [row.row, row]));
      for (const [row, find] of clean) {
        const { side: _, decoration: __, ...kept } = find;
        expect({ seed, row, find: byRow.get(row)?.find }).toEqual({ seed, row, find: kept });
      }
    }
  });

  test('a cell that was broken is asked about, at its row and column', () => {
    for (const { mess, seed, read } of lists) {
      const { questions, columns } = read;
      for (const { row, field, written } of mess) {
        const asked = questions.find((question) => question.row === row && question.field === field);
        expect({ seed, row, field, written, asked: asked?.received }).toEqual({
          seed,
          row,
          field,
          written,
          asked: written,
        });
        expect(columns[asked?.column ?? -1]?.guess).toBe(field);
      }
    }
  });

  test('blank rows and column names over again are left out', () => {
    for (const { junk, seed, read } of lists) {
      const out = read.rows.filter(({ outcome }) => outcome === 'left-out');
      expect({ seed, out: out.map(({ row }) => row) }).toEqual({
        seed,
        out: [...junk].toSorted((a, b) => a - b),
      });
    }
  });

  test('what is written as our own files reads back to the same finds, and no cell begins a formula', () => {
    for (const { seed, read: taken } of lists) {
      const { finds } = taken;
      const table = writeFindsTable(finds);
      const site = writeSite(siteHead(`List ${seed}`), finds);
      const read = readSite('site.yaml', site, [{ file: 'site.finds.csv', text: table }], vocabulary);
      expect(read.problems.filter(({ grade }) => grade === 'error')).toEqual([]);
      const back = read.value?.pits.flatMap((pit) => pit.finds) ?? [];
      const order = (a: { id: string }, b: { id: string }): number => (a.id < b.id ? -1 : 1);
      expect(back.toSorted(order)).toEqual(finds.toSorted(order));
      expect(table).not.toMatch(/(?:^|,)"?[=+@-]/m);
      const again = readFindsIn(table, given);
      expect(again.finds).toEqual(finds);
    }
  });

  test('a list of 3,000 rows is read in under a second', () => {
    const [longest] = lists.toSorted((a, b) => b.dataRows - a.dataRows);
    if (longest === undefined) throw new Error('no lists');
    expect(longest.dataRows).toBeGreaterThanOrEqual(3000);
    expect(processorMs(() => readFindsIn(longest.text, { vocabulary, words: demoWords }))).toBeLessThan(1000);
  });

  test('the same list gives the same result, prepared or not', () => {
    for (const { text } of lists.slice(0, 20))
      expect(readFindsIn(text, given)).toEqual(readFindsIn(text, given));
  });
});
