import type { Sheet } from '../../shared/activities/index.ts';

/** The sheets that show their strip of work: of those with the same strip, the last. */
export function lastStrips(sheets: readonly Sheet[], part: Sheet['part']): ReadonlySet<Sheet> {
  const last = new Map<string, Sheet>();
  for (const sheet of sheets) {
    if (sheet.part === part && 'strip' in sheet && sheet.strip !== null)
      last.set(JSON.stringify(sheet.strip), sheet);
  }
  return new Set(last.values());
}
