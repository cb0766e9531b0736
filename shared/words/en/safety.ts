/** One step of the reckoning of adults, in plain values. */
type Step =
  | {
      readonly rule: 'ratio';
      readonly framework: string;
      readonly row: {
        readonly published: string;
        readonly standing: string;
        readonly status: string;
        readonly source: string;
      };
      readonly childrenPerAdult: number;
      readonly children: number;
      readonly adults: number;
    }
  | { readonly rule: 'ratio-silent'; readonly framework: string; readonly age: number }
  | { readonly rule: 'no-framework' }
  | {
      readonly rule: 'station';
      readonly station: {
        readonly name: string;
        readonly minimumSupervisors: number;
        readonly status: string;
      };
      readonly childrenAtOnce: number;
      readonly childrenPerSupervisor: number;
      readonly supervisors: number;
    }
  | {
      readonly rule: 'waiting';
      readonly children: number;
      readonly childrenPerAdult: number;
      readonly supervisors: number;
    }
  | { readonly rule: 'one-to-one'; readonly adults: number }
  | {
      readonly rule: 'decided';
      readonly by: 'ratio' | 'stations' | 'two-at-least';
      readonly supervisors: number;
    }
  | {
      readonly rule: 'practitioner';
      readonly station: { readonly name: string };
      readonly practitioners: number;
    }
  | {
      readonly rule: 'first-aid';
      readonly firstAiders: number;
      readonly attendance: number | null;
      readonly isPaediatric: boolean;
    };

const DECIDED = {
  ratio: 'the ratio',
  stations: 'the stations that run together',
  'two-at-least':
    'the rule of two: one goes with a hurt child, one stays (NSPCC 2023; that practitioners do not count is ASM)',
} as const;

/** Why a number of adults is asked for, one step a sentence. */
export function becauseSentence(step: Step): string {
  switch (step.rule) {
    case 'ratio':
      return `${step.framework}: 1 adult to ${step.childrenPerAdult}, so ${step.adults} for ${step.children} children (published as: ${step.row.published}; ${step.row.standing}; ${step.row.status}: ${step.row.source})`;
    case 'ratio-silent':
      return `${step.framework} gives no figure for age ${step.age}`;
    case 'no-framework':
      return 'no framework was chosen, so no ratio is reckoned';
    case 'station':
      return `${step.station.name}: 1 supervisor to ${step.childrenPerSupervisor}, at least ${step.station.minimumSupervisors}, so ${step.supervisors} for ${step.childrenAtOnce} (${step.station.status})`;
    case 'waiting':
      return `${step.children} waiting: 1 to ${step.childrenPerAdult}, so ${step.supervisors} more`;
    case 'one-to-one':
      return `${step.adults} one-to-one on top, who supervise no one else`;
    case 'decided':
      return `decided by ${DECIDED[step.by]}: at least ${step.supervisors} supervisors`;
    case 'practitioner':
      return `${step.station.name}: ${step.practitioners} practitioner of its own, never counted as a supervisor (ASM)`;
    case 'first-aid':
      return step.attendance === null
        ? `first aid: ${step.firstAiders} of the supervisors${step.isPaediatric ? ', with a current paediatric certificate (a child is under 5)' : ''}`
        : `first aid: 2 for each 1000, at least 2, so ${step.firstAiders} for ${step.attendance} (older event figure, RF)`;
    default:
      return step satisfies never;
  }
}

interface Reckoned {
  readonly supervisors: number;
  readonly practitioners: number;
  readonly totalAdults: number;
  readonly firstAiders: number;
}

interface Listed {
  readonly id: string;
  readonly name: string;
  readonly worst: string;
  readonly who: readonly string[];
  readonly never: readonly string[];
  readonly deferTo: string;
  readonly controls: readonly {
    readonly level: string;
    readonly text: string;
    readonly status: string;
    readonly source: string;
  }[];
}

const bulleted = (lines: readonly string[]): string => lines.map((line) => `  - ${line}\n`).join('');

/** What the verbs `adults` and `hazards` say. */
export const safetyWords = {
  first: (): string =>
    'Local law and your employer’s policy come first. These are floors for planning, never a promise that a visit is safe.',
  adults: (
    adults: Reckoned,
    because: readonly string[],
    refused: readonly {
      readonly id: string;
      readonly outcome: string;
      readonly say: string;
      readonly mend: string;
    }[],
    hazards: readonly string[],
  ): string =>
    `At least ${adults.totalAdults} adults by the figures chosen: ${adults.supervisors} supervisors, ${adults.practitioners} practitioners. First aiders among them: ${adults.firstAiders}.\n\nBecause\n${bulleted(because)}${
      refused.length === 0
        ? ''
        : `\nRefused or held\n${bulleted(refused.map(({ id, outcome, say, mend }) => `${id} (${outcome}): ${say} ${mend}`))}`
    }\nHazards\n${bulleted(hazards)}\n`,
  hazards: (rows: readonly Listed[]): string =>
    rows
      .map(
        ({ name, worst, who, never, deferTo, controls }) =>
          `${name}\n  who: ${who.join(', ')}\n  worst: ${worst}\n${bulleted(controls.map(({ level, text, status, source }) => `${level}: ${text} (${status}: ${source})`))}${bulleted(never.map((line) => `never: ${line}`))}  who decides: ${deferTo}\n`,
      )
      .join('\n'),
  adultsNeeds: (): string =>
    'adults needs a lesson and a class, a day, or a situation: pitlore adults FILE --pupils N [--ages A-B] [--framework ID], pitlore adults DAY.yaml, or pitlore adults --situation FILE.yaml',
  hazardsNeeds: (): string =>
    'hazards needs a lesson or a situation: pitlore hazards FILE, or pitlore hazards --situation FILE.yaml',
  pupilsUnfit: (written: string): string =>
    `expected a whole number of pupils after --pupils; received "${written}"`,
  agesUnfit: (written: string): string =>
    `expected ages from 4 to 16 after --ages, as 7-9; received "${written}"`,
  settingUnknown: (written: string, known: readonly string[]): string =>
    `expected a setting: ${known.join(', ')}; received "${written}"`,
  frameworkUnknown: (written: string, known: readonly string[]): string =>
    `expected a framework: ${known.join(', ')}; received "${written}"`,
  localUnfit: (): string =>
    'the framework "local" needs your own figure: --local CHILDREN-PER-ADULT, a whole number from 1',
};
