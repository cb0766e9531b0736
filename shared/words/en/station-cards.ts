import type { Entry } from '../entry.ts';

/** The words of station cards and signs. */
export const stationWords = {
  cards: 'Station cards',
  lead: 'One for each station: whoever runs it reads it before the gate opens. The figures are our judgement (ASM) where no source stands beside them; local rules, your employer’s assessment and the practitioner come first.',
  time: 'Time',
  timeDay: 'as the day sheet says',
  leads: 'Who leads',
  leadsPractitioner: 'a competent practitioner of this work, whose hands are on it and who supervises nobody',
  leadsHelper: 'a helper who has read this card and the answers',
  beside: 'Beside them',
  supervisors: { one: '{count} supervisor', other: '{count} supervisors' },
  supervisorsFor: '{supervisors} for {children} children at once',
  atOnce: 'At once',
  atOnceChildren: '{children} children at most',
  frontRow: 'Front row',
  frontRowMetres: 'at {metres} m, behind the rope',
  eyes: 'Eyes covered',
  eyesMetres: 'everyone nearer than {metres} m',
  pieces: 'Pieces',
  piecesLine: '{types}. Sharpest class: {edge}. {exposure}',
  setOut: 'Set out',
  setOutCards: 'a set of cards for each pair',
  setOutSheets: 'a pupil sheet and a pencil for each pupil',
  setOutAnswers: 'the answers, face down',
  run: 'Run it',
  runNote: 'Our judgement, from common practice: change it where you know better.',
  watch: 'Watch for',
  watchLead: 'What was decided beforehand stands in the safety sheet; this is for the day.',
  watchNothing:
    'Nothing sharp, hot or raw belongs at this table: drawings and paper only. If a real piece turns up, stop and fetch the lead.',
  never: 'Never',
  close: 'Before the group moves on',
  closeCount: 'count everything back to its place. Hands washed where anything but paper was touched.',
  signs: 'Signs',
  signsLead:
    'Words to hang where they are wanted, one to a page, on their side. Where the law or the site asks for a registered sign, buy that: these are words, not the sign. Numbers are of ISO 7010.',
  signStation: 'at the station',
  signColWords: 'Words',
  signColWhere: 'Where',
  signColNumber: 'Registered sign',
  signMinutes: '{minutes} minutes',
  signRope: 'Please stay behind the rope',
  signOnlyExpert: 'Only the expert works here. You look, you listen.',
  signSharp: 'Hands flat. One piece at a time, over the tray.',
  signHands: 'Hands are washed before you go on.',
  signTable: 'Everyone can take part.',
} as const satisfies Readonly<Record<string, Entry>>;

/** Words for registered signs, by their numbers; signs that are no use as words are not here. */
export const signWords: Readonly<Record<string, string>> = {
  W022: 'Sharp: look with your eyes',
  W008: 'Edge: keep well back',
  M004: 'Eyes covered from here',
  M011: 'Wash your hands',
  P010: 'Please do not touch',
  P071: 'Stay behind the rope',
  E003: 'First aid',
  E007: 'Meeting point',
};

/** How an activity is run at a table, by kind. */
export const activitySteps = {
  sort: [
    'Lay the cards out face up, and the trays of the pupil sheet beside them.',
    'Before a card moves, ask for the sign: what do you see that tells you?',
    'A pair agrees and says why, then lays the card. A change of mind is good.',
    'Read the answers together: what the record says, how we know, what could be argued.',
  ],
  order: [
    'Shuffle the cards. The letters say nothing of their place.',
    'Lay the first together. Ask of each card what had to be done before it.',
    'Leave two steps that could change places: both orders are right.',
    'Read the answers together, and ask which card they would draw differently now.',
  ],
  estimate: [
    'Show what it is about and read the question. Nobody says a number yet.',
    'Each writes a guess on the sheet, then puts a mark on the tally.',
    'Look at the middle of the marks and how far they spread before the answer is read.',
    'Read how it was worked out. Ask which part, if changed, would change it most.',
  ],
  barter: [
    'Deal the cards. There is no money: a swap happens only when both are content.',
    'One swap at a time, written down as it is made.',
    'Stop when time is up. Ask who is better off, and who could not find anyone.',
    'Read the answers. Ask who would have given without a swap, and why.',
  ],
  compare: [
    'Look at the pits side by side, one kind of find at a time.',
    'Each says what they think and marks it before anyone counts.',
    'Ask how else two pits could come to look alike.',
    'Read the answers, and ask what another pit would have to hold to change our mind.',
  ],
  handle: [
    'A lined tray for each pair, places numbered, every piece checked this morning. Count out.',
    'Say the rules before anything is touched. What is only to be looked at stays in its case.',
    'One piece at a time, in the order of the helper’s card. Ask what they notice before you say what it is.',
    'Count back. Then hands, and the record: what each piece is, and how we know.',
  ],
  talk: [
    'Read the question. Say that nobody knows for sure. Count hands before anyone argues.',
    'Read every voice aloud, the ones you doubt too, and where each comes from.',
    'Ask of each piece of evidence: if we found that, who would think otherwise?',
    'Count hands again. Nobody says why they moved unless they want to.',
  ],
} as const satisfies Readonly<Record<string, readonly string[]>>;

/** How a station of a visit is run, by what it is. Each step follows the controls of the hazards file. */
export const stationSteps = {
  'knapping-demo': [
    'Rope on its stakes before anyone comes. The rope keeper stands at it and watches people, not the stone.',
    'Say before the first blow: only the practitioner makes stone tools; feet behind the rope; if I say stop, we stop.',
    'The practitioner works and stops whenever anyone moves inside the rope. Pupils say where they think the next flake will leave.',
    'End by saying that this is not for home, glass and bottles least of all. Waste goes into its lidded box at once.',
  ],
  'wet-grinding-demo': [
    'Slab in its tray, wet before anyone comes and kept wet. Rope and keeper in place.',
    'Say first: grinding is shown, never tried; dust is what we keep out of the air.',
    'The practitioner grinds for a few minutes. Pupils count strokes with empty hands and guess the hours.',
    'Slurry goes into its lidded tub wet, and is never left to dry.',
  ],
  'hafting-demo': [
    'Check heads and hafts. Guards stay on until the practitioner takes them off inside the rope.',
    'Say first: edges are for the practitioner; nobody stands in line with a swing.',
    'Show binding and wedge, then the stroke. Pupils mime it with empty hands on the count.',
    'Guards on and tools locked away before anyone leaves the rope.',
  ],
  'pitch-fire-demo': [
    'Hearth raised and roped, water and blanket at hand, wind looked at, leave of the site owner in the pocket.',
    'Say first: fire and hot pitch are for the practitioner; hair and sleeves tied back behind the rope.',
    'Show the melt and the set. Pupils feel a cold, set lump.',
    'The fire is watched until it is out and cold.',
  ],
  'sharp-handling': [
    'Each edge checked with cotton wool this morning, its class on the tray card. A lined tray for each pair, places numbered.',
    'Say before anything is touched: flat hands, hold by the faces, never along an edge, put it down before you pass it on.',
    'One piece at a time over the tray, seated or standing still. Ask what they see before what it is.',
    'Count out and count back. Nothing goes into a pocket.',
  ],
  'blunt-handling': [
    'A lined tray for each pair, places numbered, every piece checked to be blunt.',
    'Say first: one piece at a time, over the tray, put it down before you pass it on.',
    'Ask for weight, warmth, sound and wear before anyone says what it is.',
    'Count out and count back.',
  ],
  'animal-materials': [
    'Only tanned hide and boiled, dry bone or antler is on the table. Soap and water stand ready.',
    'Ask who would rather look than touch, and let them.',
    'Feel and smell one thing at a time. Ask what else the animal was good for.',
    'Hands washed with soap before anyone eats or goes on.',
  ],
  pigment: [
    'Ochre wet, never as dry powder in the air. Old shirts on, sleeves up.',
    'Say first: nothing near mouth or eyes.',
    'Show how colour is made and laid on. Pupils mark stones or paper.',
    'Hands washed with soap, table wiped wet.',
  ],
  'mock-dig': [
    'Sand raked and checked for litter, damp enough not to dust. Buckets marked at the fill line.',
    'Say first: trowels stay low, and what you find stays where it lies until it is drawn.',
    'Scrape, find, draw, then lift. Ask what lay beside what.',
    'Finds counted back, sand covered, hands washed.',
  ],
  'site-tour': [
    'Plant stopped and barriers checked with the site manager this morning.',
    'Say first: one adult leads, one closes; the route is the only way; nobody steps over a barrier.',
    'Stop only where there is room behind the barrier. Count at each stop.',
    'Count out at the gate, with the site office told.',
  ],
  'table-activity': [
    'Papers laid out, a place for each.',
    'Read the question aloud. Ask what they see before what they think.',
    'Leave time for a change of mind.',
    'Read the answers together.',
  ],
  'food-break': [
    'Soap, water and towels before food. Food stays away from soil, ochre and flint.',
    'Two adults with the group throughout.',
    'Toilets by the school’s own rule.',
    'Count before moving on.',
  ],
} as const satisfies Readonly<Record<string, readonly string[]>>;
