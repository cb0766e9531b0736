import { article } from './article.ts';
import { quoted } from './problems.ts';

interface Sentences {
  readonly expected: string;
  readonly received: string;
  readonly mend: string;
}

const either = (words: readonly string[]): string => words.join(', or ');

/** What is said of a framework file. */
export const frameworkWords = {
  ages: (from: number, to: number): Sentences => ({
    expected: `an age above ${from}, which the stage ends before`,
    received: String(to),
    mend: `write the age at which pupils leave the stage: "to: ${from + 1}" for a single year`,
  }),
  repeated: (id: string): Sentences => ({
    expected: 'each outcome once',
    received: `${quoted(id)} a second time`,
    mend: 'give this outcome another id, or remove it',
  }),
};

/** What is said of a claim that a lesson does not earn. */
export const claimWords = {
  unknown: (id: string, near: string | null, count: number): Sentences => ({
    expected: `one of the ${count} outcomes in content/curricula`,
    received: quoted(id),
    mend: near === null ? 'look the outcome up on the page of outcomes' : `write ${quoted(near)}`,
  }),
  repeated: (id: string): Sentences => ({
    expected: 'each outcome claimed once',
    received: `${quoted(id)} a second time`,
    mend: 'remove one of the two claims',
  }),
  anotherPeople: (id: string, because: string): Sentences => ({
    expected: 'outcomes about the people whose finds these are',
    received: `${quoted(id)}. ${because}`,
    mend: 'remove the claim',
  }),
  anotherPlace: (id: string): Sentences => ({
    expected: 'a real site in the place the outcome names',
    received: `${quoted(id)}, claimed with an invented site`,
    mend: 'remove the claim, or use a site of that place',
  }),
  wrongStage: (id: string, stage: string, bands: readonly string[]): Sentences => ({
    expected: 'outcomes of the stages these bands are in',
    received: `${quoted(id)}, which is for ${stage}`,
    mend:
      bands.length === 0
        ? 'remove the claim'
        : `remove the claim, or make the lesson for ${either(bands.map((band) => `ages ${band}`))}`,
  }),
  noEvidence: (
    id: string,
    wanted: readonly { readonly kind: string; readonly means: string }[],
  ): Sentences => ({
    expected: either(
      wanted.slice(0, 3).map(({ kind, means }) => `${article(kind)} ${kind} in which ${means}`),
    ),
    received: `${quoted(id)}, and no activity that shows it`,
    mend: 'remove the claim, add such an activity, or vouch for what happens in the room with "vouched" in the block',
  }),
  beyondBand: (id: string, needs: readonly string[], stage: string): Sentences => ({
    expected: `numbers of ${stage}`,
    received: `${quoted(id)}, shown only by an activity that needs ${needs.map((need) => need.replaceAll('-', ' ')).join(', ')}`,
    mend: 'remove the claim, or claim it for an older band',
  }),
  gradeTooHigh: (id: string, grade: string, best: string): Sentences => ({
    expected: `${quoted(id)} ${best} at most`,
    received: grade,
    mend: `write "grade: ${best}"`,
  }),
  vouchNeedless: (id: string): Sentences => ({
    expected: 'conditions only the lead can see to',
    received: `${quoted(id)}, which is worked out from the activity itself`,
    mend: 'remove the word; change what the activity asks instead',
  }),
};
