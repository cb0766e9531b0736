import { stringify } from 'yaml';
import type { Framework } from '../curriculum/index.ts';
import { caseWords } from '../words/en/case.ts';

/** A framework as the text of a framework file, which `readFramework` reads as the same framework. */
export function writeFramework({ agesKnown, stages, sources, outcomes, ...head }: Framework): string {
  const data = {
    ...head,
    'ages-known': agesKnown,
    stages,
    sources: sources.map(({ url, ...source }) => ({ ...source, ...(url === null ? {} : { url }) })),
    outcomes: outcomes.map(({ code, never, evidence, ...outcome }) => ({
      ...outcome,
      ...(code === null ? {} : { code }),
      ...(never === null ? {} : { never }),
      ...(evidence.length === 0 ? {} : { evidence }),
    })),
  };
  return `${caseWords.fileHead}${stringify(data, { lineWidth: 0, aliasDuplicateObjects: false })}`;
}
