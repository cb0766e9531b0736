import { quoted } from './problems.ts';

interface Row {
  readonly status: string;
  readonly source: string;
}

interface Station extends Row {
  readonly name: string;
  readonly minimumSupervisors: number;
}

/** One step of the reckoning of adults, as plain values. */
type Because =
  | {
      readonly rule: 'ratio';
      readonly framework: string;
      readonly row: Row & { readonly published: string; readonly standing: string };
      readonly childrenPerAdult: number;
      readonly children: number;
      readonly adults: number;
    }
  | { readonly rule: 'ratio-silent'; readonly framework: string; readonly age: number }
  | { readonly rule: 'no-framework' }
  | {
      readonly rule: 'station';
      readonly station: Station;
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
  | { readonly rule: 'decided'; readonly by: string; readonly supervisors: number }
  | { readonly rule: 'practitioner'; readonly station: Station; readonly practitioners: number }
  | {
      readonly rule: 'first-aid';
      readonly firstAiders: number;
      readonly attendance: number | null;
      readonly isPaediatric: boolean;
    };

const DECIDED: Readonly<Record<string, string>> = {
  ratio: 'the ratio decides',
  stations: 'the stations that run together decide',
  'two-at-least': 'two at least decides: one goes with a hurt child, one stays',
};

const children = (count: number): string => `${count} ${count === 1 ? 'child' : 'children'}`;

/** A step of the reckoning as a sentence, with how its figure is known. */
export function becauseSentence(because: Because): string {
  switch (because.rule) {
    case 'ratio': {
      const { framework, row, childrenPerAdult, adults } = because;
      return `${framework}: 1 adult to ${childrenPerAdult}, so ${adults} for ${children(because.children)}. Published: ${row.published}; ${row.standing} (${row.status}: ${row.source})`;
    }
    case 'ratio-silent':
      return `${because.framework}: no figure for a youngest child of ${because.age}`;
    case 'no-framework':
      return 'no framework chosen, so no ratio is reckoned';
    case 'station': {
      const { station, childrenAtOnce, childrenPerSupervisor, supervisors } = because;
      return `${station.name}: 1 supervisor to ${childrenPerSupervisor}, ${station.minimumSupervisors} at least, so ${supervisors} for ${children(childrenAtOnce)} (${station.status}: ${station.source})`;
    }
    case 'waiting':
      return `waiting, at no station: 1 adult to ${because.childrenPerAdult}, so ${because.supervisors} for ${children(because.children)}`;
    case 'decided':
      return `${DECIDED[because.by] ?? because.by}: at least ${because.supervisors} supervisors by the figures you chose`;
    case 'one-to-one':
      return `one-to-one helpers come on top and see to no one else: ${because.adults}`;
    case 'practitioner':
      return `${because.station.name}: practitioners ${because.practitioners}, never counted as supervisors`;
    case 'first-aid':
      return `first aiders: ${because.firstAiders}${because.attendance === null ? ', among the supervisors' : ` for ${because.attendance} visitors`}${because.isPaediatric ? ', with a paediatric certificate, for a child is under five' : ''}`;
    default:
      return because satisfies never;
  }
}

/** What the verbs about adults and hazards say besides their numbers. */
export const safetyCommandWords = {
  adultsNeeds: (): string =>
    'adults needs a lesson and how many come: pitlore adults FILE --pupils N --ages A-B --framework ID [--json], or pitlore adults --situation FILE.yaml',
  hazardsNeeds: (): string =>
    'hazards needs a lesson: pitlore hazards FILE [--json], or pitlore hazards --situation FILE.yaml',
  notALesson: (file: string): string =>
    `expected a lesson (.md); received ${quoted(file)}. For a situation: --situation ${file}`,
  pupilsUnfit: (written: string): string =>
    `--pupils: expected a whole number up to 100000; received ${quoted(written)}`,
  agesUnfit: (written: string): string =>
    `--ages: expected the youngest and the oldest in whole years, as 7-9, none over 18; received ${quoted(written)}`,
  localUnfit: (written: string): string =>
    `--local: expected how many children to one adult, 1 to 100; received ${quoted(written)}`,
  wordUnknown: (option: string, written: string, near: string | null, known: readonly string[]): string =>
    `--${option}: expected one of ${known.join(', ')}; received ${quoted(written)}${near === null ? '' : `. Did you mean ${near}?`}`,
  localMissing: (): string =>
    '--framework local: expected --local N, the figure of your employer, council or district; received none',
  onlySituation: (): string =>
    '--situation says all there is to say: expected no lesson, --pupils, --ages, --framework, --local or --setting beside it',
  adults: (
    numbers: {
      readonly supervisors: number;
      readonly practitioners: number;
      readonly totalAdults: number;
      readonly firstAiders: number;
    },
    because: readonly string[],
  ): string =>
    `at least ${numbers.totalAdults} adults: ${numbers.supervisors} supervisors, ${numbers.practitioners} practitioners; first aiders: ${numbers.firstAiders}\n${because.map((line) => `  ${line}\n`).join('')}`,
  refusal: (refusal: {
    readonly id: string;
    readonly outcome: string;
    readonly say: string;
    readonly mend: string;
  }): string => `${refusal.id} ${refusal.outcome}: ${refusal.say} ${refusal.mend}\n`,
  hazard: (hazard: {
    readonly name: string;
    readonly who: readonly string[];
    readonly worst: string;
    readonly never: readonly string[];
    readonly controls: readonly (Row & { readonly level: string; readonly text: string })[];
  }): string =>
    `${hazard.name} (${hazard.who.join(', ')})\n  worst: ${hazard.worst}\n${hazard.controls
      .map(({ level, text, status, source }) => `  ${level}: ${text} (${status}: ${source})\n`)
      .join('')}${hazard.never.map((text) => `  never: ${text}\n`).join('')}`,
  employerFirst:
    'Local law and your employer’s policy come first. This is a floor for planning: it does not say that anything is safe.\n',
};
