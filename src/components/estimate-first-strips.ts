import type { Sheet } from '../../shared/activities/index.ts';

/** The sheets that show their strip of work: of those with the same strip, the first. */
export function firstStrips(sheets: readonly Sheet[], part: Sheet['part']): ReadonlySet<Sheet> {
  const first = new Map<string, Sheet>();
  for (const sheet of sheets) {
    if (sheet.part !== part || !('strip' in sheet) || sheet.strip === null) continue;
    const key = JSON.stringify(sheet.strip);
    if (!first.has(key)) first.set(key, sheet);
  }
  return new Set(first.values());
}
