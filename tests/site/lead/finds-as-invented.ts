import { expect } from '@playwright/test';
import Papa from 'papaparse';
import { THINGS } from './invented-finds.ts';
import type { MadeList } from './finds-dialects.ts';

/** Holds a finds table saved from the Bench against the finds its list was made from, number by number. */
export function expectFindsAsInvented(table: string, { rows }: MadeList): void {
  const { data } = Papa.parse<Record<string, string>>(table, { header: true, skipEmptyLines: true });
  const taken = new Map(data.map((row) => [Number(row['small find']), row]));
  const finds = new Map([...rows.values()].map((find) => [find.number, find]));
  expect([...taken.keys()].toSorted()).toEqual([...finds.keys()].toSorted());
  for (const [number, { pit, context, thing, lengthMm, widthMm, thicknessMm, isBroken }] of finds) {
    const row = taken.get(number);
    expect({ number, ...row }).toMatchObject({
      number,
      pit: `P${pit}`,
      context: String(context),
      'object type': THINGS[thing].id,
      material: THINGS[thing].material,
      'length mm': String(lengthMm),
      'width mm': String(widthMm),
      'thickness mm': String(thicknessMm),
      age: THINGS[thing].age,
    });
    if (isBroken) expect({ number, state: row?.['state'] }).toEqual({ number, state: 'broken' });
  }
}
