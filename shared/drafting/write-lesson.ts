import type { Claim } from '../curriculum/index.ts';
import type { Site } from '../library/index.ts';
import { draftingWords as words } from '../words/en/drafting.ts';
import type { Candidate, DraftRequest } from './draft.ts';

const FENCE = '```';

const block = ({ kind, title, minutes, lines }: Candidate): string =>
  [`${FENCE}${kind}`, `title: ${JSON.stringify(title)}`, ...lines, `minutes: ${minutes}`, FENCE].join('\n');

/** A draft as a lesson file, the same format a lead writes. */
export function writeLesson(
  request: DraftRequest,
  site: Site,
  activities: readonly Candidate[],
  claims: readonly Claim[],
): string {
  const finds = new Set(activities.flatMap((activity) => activity.finds)).size;
  const head = [
    `title: ${JSON.stringify((request.title ?? words.lessonTitle(site.name)).slice(0, 120))}`,
    `about: ${JSON.stringify(words.about(finds, activities.length))}`,
    `site: ${site.id}`,
    `bands: [${request.bands.join(', ')}]`,
    `minutes: ${request.minutes}`,
    ...(claims.length === 0
      ? []
      : [
          'claims:',
          ...claims.map(
            ({ outcome, grade }) => `  - { outcome: ${JSON.stringify(outcome)}, grade: ${grade} }`,
          ),
        ]),
  ];
  // Two of a kind in a row are spoken of once.
  const body = activities.flatMap((activity, index) => {
    const said = activities[index - 1]?.kind === activity.kind ? undefined : words.before[activity.kind];
    return [...(said === undefined ? [] : [said]), block(activity)];
  });
  return `---\n${head.join('\n')}\n---\n${[words.opening(), ...body, words.closing()].join('\n\n')}\n`;
}
