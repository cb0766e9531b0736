import type { Find } from '../library/library.ts';
import type { Status } from '../library/status.ts';
import { plain } from './plain.ts';
import { APART_M, pitLines } from './stand-ins.ts';
import { siteWords as words } from '../words/en/finds-in-site.ts';

/** What a site file says of the place; a finds list knows none of it. */
export interface SiteHead {
  readonly id: string;
  readonly name: string;
  readonly code: string;
  readonly organisation: string;
  readonly story: string;
  readonly soils: string;
  readonly status: Status;
}

/** A head with stand-ins that say they are, from the name of a site or a file. @example siteHead('My dig 2').id // 'my-dig-2' */
export function siteHead(name: string): SiteHead {
  const id =
    plain(name)
      .replace(/[^a-z0-9-]/g, '')
      .replace(/^[^a-z]+/, '') || 'my-site';
  const shown = name.trim() === '' ? words.name() : name.trim();
  return {
    id,
    name: shown,
    code: (id.match(/[a-z0-9]/g) ?? []).slice(0, 3).join('').toUpperCase(),
    organisation: words.organisation(),
    story: words.story(),
    soils: words.soils(),
    status: 'ASM',
  };
}

/**
 * The site file that goes with a finds table: pits and fills by name, their places and sizes stand-ins that a comment
 * says are to be replaced.
 */
export function writeSite(head: SiteHead, finds: readonly Find[]): string {
  const contextsOf = new Map<string, Set<number>>();
  for (const { pit, context } of finds) contextsOf.set(pit, (contextsOf.get(pit) ?? new Set()).add(context));
  const text = (value: string): string => JSON.stringify(value);
  const pits = [...contextsOf].map(([id, contexts], index) => {
    const fills = [...contexts].toSorted((a, b) => a - b);
    const cut = Math.max(1, (fills[0] ?? 1) - 1);
    const pit = { id, cut, eastM: index * APART_M, northM: 0, topLevelMOd: 0, contexts: fills };
    return pitLines(pit)
      .map((line, place) => `${place === 0 ? '- ' : '  '}${line}`)
      .join('\n');
  });
  const period = [
    `  label: ${text(words.periodLabel())}`,
    '  from-bce: 2900',
    '  to-bce: 2400',
    '  status: ASM',
    `  note: ${text(words.periodNote())}`,
  ].join('\n');
  return [
    ...words.head().map((line) => `# ${line}`),
    `id: ${head.id}`,
    `name: ${text(head.name)}`,
    `code: ${text(head.code)}`,
    `status: ${head.status}`,
    `story: ${text(head.story)}`,
    `organisation: ${text(head.organisation)}`,
    `period:\n${period}`,
    `soils: ${text(head.soils)}`,
    pits.length === 0 ? 'pits: []' : `pits:\n${pits.join('\n')}`,
    '',
  ].join('\n');
}
