import { quoted } from './problems.ts';

interface Told {
  readonly grade: 'error' | 'caution';
  readonly expected: string;
  readonly received: string;
}

const counted = (count: number, one: string, other: string): string =>
  `${count} ${count === 1 ? one : other}`;

/** What the command line says. */
export const commandWords = {
  message: ({ expected, received }: Told): string => `expected ${expected}; received ${received}`,
  checked: (files: number, problems: readonly Told[]): string => {
    const errors = problems.filter(({ grade }) => grade === 'error').length;
    const cautions = problems.length - errors;
    return `${counted(files, 'file', 'files')} checked: ${counted(errors, 'error', 'errors')}, ${counted(cautions, 'caution', 'cautions')}\n`;
  },
  drawNeeds: (views: readonly string[]): string =>
    `draw needs a find: pitlore draw FINDID [--view ${views.join('|')}] [--mm-per-px N]`,
  findUnknown: (written: string, near: string | null, count: number): string =>
    `expected one of the ${count} finds of the content folder; received ${quoted(written)}${near === null ? '' : `. Did you mean ${near}?`}`,
  needsFile: (verb: string): string => `${verb} needs a file: pitlore ${verb} FILE`,
  coverageNeeds: (): string => 'coverage needs a folder of lessons: pitlore coverage DIR',
  scoreNeeds: (): string => 'score needs a plan and plays: pitlore score PLAN.json PLAYS.json',
  newNeedsName: (): string => 'new needs a name: pitlore new NAME',
  fileExists: (file: string): string => `${file} is there already; nothing was written. Choose another name.`,
  written: (file: string): string => `wrote ${file}. Look at it with: pitlore check ${file}\n`,
  playWithoutActivity: (file: string, index: number, activity: string, known: readonly string[]): string =>
    `${file}: play ${index + 1}: expected an activity of the plan (${known.join(', ')}); received ${quoted(activity)}`,
  playUnfit: (file: string, index: number, faults: readonly string[]): string =>
    `${file}: play ${index + 1} does not fit its activity: ${faults.join('; ')}`,
  verbUnknown: (written: string, near: string | null, known: readonly string[]): string =>
    `expected a verb (${known.join(', ')}); received ${quoted(written)}${near === null ? '' : `. Did you mean ${near}?`}`,
  failed: (verb: string, message: string): string => `${verb} stopped: ${message}`,
  help: (): string => `Pitlore: lesson files about real archaeology, made into activities.

  pitlore check FILE…  [--json] [--content FOLDER]   the problems of lessons, sites, days, frameworks, finds tables
  pitlore compile FILE [--seed N] [--content FOLDER] the plan of a lesson, as JSON
  pitlore score PLAN.json PLAYS.json                 what each play comes to, with its working
  pitlore new NAME                                   a commented lesson to start from
  pitlore pack FILE [--out PACK.html]                a lesson as one file that opens by double click, no network
  pitlore papers FILE --out DIR [--size a4|letter] [--large] [--backs]   all its papers, as PDF where a Chromium is there
  pitlore notes FILE [--band B] [--out X.md]         the teacher notes as plain text (Markdown)
  pitlore draw FINDID [--view face|full|lying] [--mm-per-px N]   a find's drawing, as SVG
  pitlore alike COUNTS.csv [--by brainerd-robinson|jaccard|dice] [--shuffles N --seed S]   how alike pits are
  pitlore orders STEPS.yaml                          how many orders the steps of a making allow
  pitlore swap WORLD.yaml                            whether a world of swaps can be solved, and in how few
  pitlore fair --pupils N --band B --seed S          cards for a class to trade with, and the best it could do
  pitlore adults FILE --pupils N [--ages A-B] [--framework ID] [--json]   adults a class needs at a lesson, and why
  pitlore adults DAY.yaml [--framework ID] [--json]  the same for a day: its strictest moment, and which that is
  pitlore adults --situation FILE.yaml [--json]      the same for a visit described in a file
  pitlore hazards FILE|--situation FILE.yaml [--json]   what a lesson or visit commonly brings, and the usual controls
  pitlore hours --length MM --width MM --thickness MM  how long an axe takes; hours --help for the rest
  pitlore reading FILE --band B [--json]             how hard it is to read, and where
  pitlore claims FILE [--offered] [--json]           the outcomes a lesson claims, earned or not, and those it could
  pitlore coverage DIR [--framework ID] [--json]     which outcomes a folder of lessons meets, and which none does
  pitlore day DAY.yaml [--json] [--wet] [--seconds N] [--ics OUT.ics]   who is where in each slot, or why there is no such day
  pitlore day --from-lesson FILE [--pupils N] [--out DAY.yaml]   a day file made from a lesson, with stand-ins to write over
  pitlore dropin --per-hour N --minutes M --places C [--json]   how long people wait at a station they drop in on
  pitlore finds FILE.csv [--site ID] [--out DIR] [--json]   a finds list as it comes: what is guessed, what is asked, and our own files
  pitlore finds FILE.csv --into SITE.yaml [--new-places] [--same-number leave|replace|number-on] [--write] [--json]   a finds list into a site that is there: what is new, the same, or asked; nothing is written without --write
  pitlore draft SITEID --bands B,B --minutes N [--seed S] [--kinds K,K] [--subjects S,S] [--pin FIND] [--out FILE] [--why] [--json]   a lesson from a site's finds, and why
  pitlore framework FILE [--to-case|--from-case] [--changed DATETIME]   a framework as a CASE 1.1 package, and back

A lesson looks for its finds in the nearest folder above it that holds vocabulary.yaml, else in the demo content.
Exit codes: 0 done, 1 errors in a file, 2 the command was not understood.
`,
};

/** A lesson to start from: it checks clean on the demo content, and says of every line what it is for. */
export const starterLesson = (name: string): string => `---
# The head: what the lesson is. Lines that begin with # are notes to yourself.
title: ${JSON.stringify(name)}
about: One sentence for the list of lessons.
site: wendle-marsh        # the id of a site file in content/sites
bands: [7-9]              # 4-5, 5-7, 7-9, 9-11, 11-14, 14-16: one or several
minutes: 30               # the whole lesson
---
Write here what you say, or what pupils read. Markdown works: **strong**, lists, links.
Drawings of the finds are made for you.

\`\`\`sort
title: Who made this?
finds: { pit: P3 }        # every find of a pit, or a list of ids: [P3-124, P3-125]
by: made-by               # made-by, material, used-for, age, state, object-type
trays:                    # a value of that attribute, or a name with the values it holds
  - carved
  - ground
  - { name: fired or burnt, holds: [fired, burnt], hint: changed by heat }
  - { name: not made or flaked, holds: [natural, flaked] }
minutes: 10
# also: [{ find: P3-125, tray: carved, because: why it can be argued }]
\`\`\`

End with a question that has no right answer.
`;
