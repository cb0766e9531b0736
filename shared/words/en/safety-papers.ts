import type { Entry } from '../entry.ts';

/** The words of the safety sheet and the risk assessment draft. */
export const safetyPapers = {
  safety: 'Safety sheet',
  assessment: 'Risk assessment draft',
  draft: 'DRAFT. Not valid until a named responsible person completes and signs it.',
  first:
    'Local law and your employer’s policy come first. Where they differ from this sheet, the stricter holds.',
  edgesTitle: 'Edges in this lesson',
  edgesLead:
    'This lesson shows drawings. Should the real things come, or copies as sharp, these are the youngest ages, each piece checked on the day. The ages are our judgement; a site may raise them.',
  edgesLeadHand:
    'By the types of find that this lesson shows, were each the real thing: the youngest ages, each piece checked on the day. The ages are our judgement; a site may raise them. What lies on the tray is listed below.',
  edgesNone: 'Nothing this lesson draws from the finds has an edge that cuts.',
  edgeClass: 'Class',
  edgeFinds: 'Here',
  look: 'Look',
  touchHeld: 'Touch, held by the practitioner',
  handle: 'Lift over the tray',
  use: 'Use',
  fromAge: 'from {age}',
  neverAge: 'never',
  adultsTitle: 'Adults for this lesson',
  adultsLead:
    'Everyone at tables with drawings, on screen or on paper; nothing sharp in the room. A floor for planning by each starting point we hold; your own policy may ask for more.',
  adultsLeadVisit:
    'Everyone at the stations above, running together, and the rest at tables with the lesson. At each station as many as it takes, or the whole class where that is fewer. Practitioners are counted in, and never as supervisors. A floor for planning by each starting point we hold; your own policy may ask for more.',
  stationsTitle: 'Stations of this visit',
  stationsLead:
    'Setting: {setting}. These are what the lesson file states, and nothing in it is refused by the rules for its youngest age, {age}. That is no promise that it is safe. Figures are our judgement (ASM).',
  station: 'Station',
  stationChildren: 'Children at once',
  stationEdge: 'Sharpest class, and how near',
  stationRope: 'Front row, metres',
  stationEyes: 'Eyes covered nearer than, metres',
  stationPractitioners: 'Practitioners',
  adultsStrictest: 'By the strictest of them:',
  framework: 'Starting point',
  frameworkStanding: 'As published, and its standing',
  frameworkLine: '1 to {ratio}. {published}; {standing}',
  frameworksSilent: 'No figure for age {age}: {names}.',
  adultsFor: 'Adults for {pupils}',
  strictest: 'strictest',
  adultsPupils: 'Pupils',
  adultsLeast: 'Adults, at least',
  adultsDecided: 'Which rule decided',
  hazardsTitle: 'What could hurt someone, and what is usually done',
  hazardsLead: 'Strongest control first. The mark in brackets says how each is known.',
  whoWorst: '{who}. At worst: {worst}',
  never: 'Never: {never}',
  decides: 'Who decides: {who}',
  kitTitle: 'What is at hand',
  sourcesTitle: 'Safety',
  sourcesLead:
    'What hazards, controls, ratios and station figures are taken from. None of it was written for this lesson, and local law and your employer come first.',
  via: 'read in:',
  marksTitle: 'The marks',
  marks:
    'RF found again in the work named; FM from memory; ASM our judgement; DER worked out here; CP common practice, no source. A word after a mark names its source.',
  blank: 'to be completed',
  byPerson: 'To be completed',
  siteRowsLead: 'The last rows are for hazards of this place not listed above.',
  siteRow: 'Hazard {number}',
  signTitle: 'Responsible person',
  signRead: 'I have read this, visited the place and changed what was wrong.',
  table: 'The same as a table for your employer’s own form (CSV)',
} as const satisfies Readonly<Record<string, Entry>>;

/** What stands at the head of a draft, for the responsible person to fill. */
export const draftHead = [
  'Place, and grid or map words',
  'Date and hours',
  'Groups and ages',
  'Adults named',
  'Weather plan',
  'First aiders',
  'Nearest emergency department',
  'Site manager and landowner',
  'Assessor',
  'Date assessed, and date to look again',
] as const;

export const signLines = ['Name', 'Role', 'Signature', 'Date'] as const;

/** Frameworks of adults to children, by their ids in the hazards file. */
const frameworkNames: Readonly<Record<string, string>> = {
  'england-visits': 'England, visits (DfEE 1998)',
  nspcc: 'NSPCC 2023',
  'eyfs-england': 'England, early years',
  'eyfs-england-level6': 'England, early years, with a teacher',
  'england-infant-class': 'England, infant class',
  'scotland-early-years': 'Scotland, early years',
  local: 'Your own',
};

/** A framework's name as people say it; its id where it has none. @example frameworkName('nspcc') // 'NSPCC 2023' */
export const frameworkName = (id: string): string => frameworkNames[id] ?? id;
