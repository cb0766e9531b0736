import type { ProblemCode } from '../../lesson/problem.ts';
import type { Entry } from '../entry.ts';

/** The words of the help page. */
export const help = {
  title: 'Help',
  lead: 'For the lead: how a lesson file is made, checked, run and printed. No programming is needed, only a text editor.',
  makeTitle: 'Make a lesson',
  makeText:
    'A lesson is one text file in content/lessons. It has a head between two lines of three hyphens, then what you say or pupils read, then activity blocks between lines of three back-ticks. Answers are worked out from the record of the finds: you never type them.',
  exampleTitle: 'A whole lesson',
  headTitle: 'The head',
  blockTitle: 'A {kind} block',
  keyName: 'Key',
  keyMeans: 'What it says',
  keyNeeded: 'Needed',
  yes: 'yes',
  no: 'no',
  findsTitle: 'Your finds',
  findsText:
    'A site is a file in content/sites: its pits and their fills. Finds stand in that file, or in a table beside it with the same name and the ending .finds.csv. Columns, in any order: {columns}. Lengths are in millimetres, masses in grams. The words you may use are in content/vocabulary.yaml; add your own there. Your own photographs go in by Photographs on the Bench, which shrinks them; or put them in content/sites/photos and list them under “photos” in the site file, each with its find, what it shows and a credit. What they tell of place and device is left out.',
  dayTitle: 'A day file',
  dayText:
    'The groups, stations and adults of a day, in YAML: write it by hand, by the form of the Day sheet, or both. Slots are counted from 1. Names are of groups and of what adults do, never of people.',
  dayGroup: 'Each group',
  dayStation: 'Each station',
  dayAdult: 'Each adult',
  checkTitle: 'Check it',
  checkText:
    'Every problem has a line, a place in the line, what was expected, what stood there, and how to mend it. An error stops that lesson only. A caution does not.',
  runTitle: 'Run it',
  runText:
    'On a screen: alone, in pairs, or hands up from the carpet with counts keyed in. On paper: cards to cut out, a pupil sheet, answers with reasons. A place in a sort is kept on the device and nowhere else; no name is asked for or stored.',
  offlineTitle: 'Without a signal',
  offlineText:
    'Open the site once with a signal, and wait until the foot of its first page says that it is ready for no signal. After that every lesson and every paper works without one, on that device. The same line says what is kept and when it was made. With a signal, a newer copy comes by itself; it takes over once every page of the site has been closed. Visits, days and what pupils did are kept apart from it and stay as they are.',
  notesTitle: 'Teacher notes',
  notesText:
    'They are made from the lesson and from content/notes.yaml. Under notes in the head you can leave rows of ours out by their id, put your own in their place (the same id), or add more: kit, talk (ask, argue), misconceptions (thought, reply), adaptations (for, do), each with its source. Rows of ours go with the kinds of activity and the words of content/glossary.yaml that the lesson uses.',
  agesTitle: 'Several ages',
  agesText:
    'A lesson for several bands has a page for all of them together and one for each. The links at the head of an activity lead to the same activity for another age. What each age did is kept apart.',
  scoreTitle: 'What the score says',
  scoreText:
    'Pupils see a count. The score in the teacher notes and on the command line is agreement beyond guessing: 0 is what dealing the same choices at random would get, 1 is the record. One tray for everything scores 0. A second home that can be argued counts as right. An estimate is scored by ratio against the spread of the making model: the middle of the line, the widest range and always the same choice get 0. Handling and talk have no score: nothing in them is right or wrong.',
  keyboardTitle: 'By keyboard or switch',
  keyboardText:
    'Tab moves from find to find. Enter or Space lifts one; then Tab chooses a tray and Enter puts it in. Escape puts it back. A switch that sends Tab and Enter can do all of it. In an estimate the arrow keys move the mark along its line; two buttons step it, and a number can be typed instead.',
  orderTitle: 'Steps in order',
  orderText:
    'In an order block you write the steps and, for each, which steps it must follow. Every order that keeps to this is right; the program counts them and says which steps may change places. Steps that wait for each other in a ring are refused, and the ring is named. Pupils choose a card and a place on the line, or move a card earlier or later.',
  handlingTitle: 'Pieces in the hand',
  handlingText:
    'In a handle block you list pieces in the order they are passed. Each names a find and says what lies on the tray: the original, a replica in the same stuff, or a blunt-replica. How sharp it is follows from the find; a copy newly struck in flint counts as a fresh edge. Write edge where somebody has checked the piece that day, and exposure where a child comes less near than lifting it: look, or touch-held while the adult keeps hold. What is too sharp for the youngest of the lesson is refused at the piece. How to hold it and what to look, feel and listen for are common practice unless you write your own. A helper’s card and a table poster are printed with the lesson.',
  talkingTitle: 'Questions nobody can settle',
  talkingText:
    'In a talk block you write a question with no right answer, at least two voices, and what would change our mind. Each voice has a source: a work from content/sources.yaml, common-practice, or invented. With stances, hands are counted before the voices are heard and after. To move is told like to stay; nothing says who was right, and there is no score.',
  compareTitle: 'Pits side by side',
  compareText:
    'In a compare block you name pits, and nothing else need be typed: what they hold is counted from the finds. With ask: places, pupils say which kinds lie in both of two pits and which only in one. With ask: chance, they say how alike pairs of pits are and whether chance alone could do it, then shuffle and look again. The program picks pairs that differ, so that both answers occur. Write what archaeologists make of it under reading, and why one may doubt it under doubts.',
  codesTitle: 'Problems, by their code',
} as const satisfies Readonly<Record<string, Entry>>;

/** What each problem means, for the help page. */
export const problemMeanings: Readonly<Record<ProblemCode, string>> = {
  'aim-held': 'The pupil holds the aim of a gathering from the start: there is nothing to do.',
  'aim-only-given': 'The aim of a gathering is a thing that is only given, never swapped.',
  'aim-unclear':
    'Another good is wanted as much as the aim, or more: it is not clear what to come home with.',
  'aim-unheld': 'Nobody at the gathering holds the aim.',
  'aim-unknown': 'The aim is not one of the goods.',
  'ask-unfit': 'A way of asking does not fit the quantity, its comparisons or the bands of the lesson.',
  'beyond-model': 'The making model was not made for this size, stone or form, and says nothing beyond.',
  'block-empty': 'An activity block has nothing in it.',
  'block-nested': 'An activity block stands inside a list or a quotation, where it is not read.',
  'block-unclosed':
    'An activity block has no closing line of three back-ticks, so it swallows the rest of the file.',
  'bundle-over': 'More things pass at once than the band can reckon with.',
  'cell-unreadable':
    'A cell of a finds table is not the number it should be, or a quote in it is never closed.',
  'chain-unfit': 'The chain asked for is too short or too long for the band.',
  'claim-beyond-band': 'What would show the outcome needs numbers its stage has not met yet.',
  'claim-of-another-people': 'The outcome is about another people: these finds are no evidence for it.',
  'claim-of-another-place': 'The outcome is about a real place, and the site is invented.',
  'claim-repeated': 'The same outcome is claimed twice.',
  'claim-too-high': 'The lesson teaches or touches the outcome, and claims more.',
  'claim-unknown': 'The outcome is in none of the frameworks.',
  'claim-without-evidence': 'No activity of the lesson shows the outcome.',
  'claim-wrong-stage': 'The outcome is for a stage that none of the bands is in.',
  'column-missing': 'A finds table lacks a column that every find needs.',
  'column-repeated': 'A finds table has the same column twice.',
  'column-unknown': 'A finds table has a column with a name that is not known.',
  'count-unfit': 'A number of things, a worth or a count of handovers is not a whole number within bounds.',
  'dead-end-final':
    'A younger pupil could get stuck by something that cannot be taken back: a gift, or food that spoils.',
  'door-never-opens': 'A trader swaps only after a gift, and returns nothing for one: the door stays shut.',
  'figures-missing':
    'An estimate needs the figures of the making model, and there are none that can be read.',
  'file-empty': 'There is nothing in the file.',
  'file-too-long': 'The file is far longer than any lesson; it was not read.',
  'find-broken': 'An estimate takes the size of a find that is broken: the whole axe was longer.',
  'find-homeless': 'A find belongs in none of the trays.',
  'find-repeated': 'The same find, or the same small-find number, stands twice.',
  'find-unknown': 'A find, a pit or a context is named that the site does not have.',
  'finds-look-alike': 'Two finds belong in different trays, and a pupil could not tell them apart.',
  'finds-too-few': 'There are too few finds to make a sort.',
  'finds-too-many': 'There are more finds than the youngest band can keep in view.',
  'gathering-unclear': 'A barter block has none of make, world and class, or more than one.',
  'good-repeated': 'Two goods have the same name.',
  'good-unknown': 'A good is held or wanted that is not among the goods.',
  'good-unused': 'Nobody holds a good. That may be meant.',
  'goods-too-few': 'There are too few goods for the gathering that is asked for.',
  'handling-refused':
    'A piece is too sharp for the youngest of the lesson to meet so near, or the place is not one for handling.',
  'head-missing': 'The file does not begin with a head.',
  'head-unclosed': 'The head is opened and never closed.',
  'home-needless': 'A second home is the same as the first.',
  'html-refused': 'Raw HTML is not read in a lesson: it could run a program on a pupil’s device.',
  'id-repeated': 'Two activities have the same id.',
  'key-missing': 'A line that is needed is not there.',
  'key-refused': 'A key is a word that reaches into programs.',
  'key-repeated': 'The same key stands twice.',
  'key-unknown': 'A key is not one of those that may stand there.',
  'kind-unknown': 'The word after the three back-ticks is not a kind of activity.',
  'kinds-too-many': 'There are more kinds of find than the youngest band can keep in view.',
  'link-unsafe': 'A link does not lead to a page.',
  'mass-doubtful':
    'A mass does not fit the size and material of its find: one of the numbers is likely a slip.',
  'minutes-over': 'The activities take longer than the lesson, or one is longer than the band sits still.',
  'minutes-under': 'There is less time than the finds need.',
  'nesting-deep': 'Lists or quotations are nested deeper than they can be read.',
  'number-beyond-band':
    'A number to be read, entered or compared is larger than those the band has met, or of a kind (decimals, fractions, per cent) it has not met.',
  'par-over': 'The shortest chain is longer than the band can keep in view.',
  'photo-unfit': 'A photograph is missing, is not a picture, is too heavy, or tells of more than it shows.',
  'picture-refused': 'A picture from elsewhere is named. Drawings are made from the finds.',
  'pit-repeated': 'The same pit is named twice.',
  'pits-one-answer':
    'The record gives the same answer to every question about these pits, so that saying it blindly would be right.',
  'prose-tangled':
    'Hundreds of lines or marks follow each other without a pause; it would take too long to read.',
  'reading-hard':
    'A sentence is longer, or the whole is harder by a published formula, than the youngest band’s target. A formula counts and sees no meaning: it is a caution, never an error.',
  'return-spoils': 'What is given back for a gift may have spoiled by then.',
  'return-unheld': 'A trader returns for a gift what they do not hold.',
  'row-ragged': 'A row of a finds table has more or fewer cells than the first.',
  'site-unknown': 'The lesson names a site that is not in content/sites.',
  'source-unknown': 'A source is named that is not in the list of sources.',
  'stance-repeated': 'Two stances of a talk say the same.',
  'steps-alike': 'Two cards say the same, so that a pupil could not tell them apart.',
  'steps-circular': 'Steps wait for each other in a ring, so none of them can come first.',
  'steps-too-many': 'There are more cards than the youngest band can hold in mind.',
  'steps-unordered': 'No step must follow another, so that every order is right and nothing can be said.',
  'trader-idle': 'A trader has nothing anyone wants and wants nothing that is there.',
  'trader-repeated': 'Two traders have the same name.',
  'traders-over': 'There are more traders than the band can keep in view.',
  'traders-unfit': 'There are too few or too many traders for the band.',
  'tray-empty': 'No find belongs in a tray. That may be meant.',
  'tray-overlap': 'The same value belongs in two trays.',
  'tray-repeated': 'Two trays have the same name.',
  'tray-unknown': 'A tray is not a value of the attribute, or is not one of the trays of the block.',
  'trays-too-many': 'There are more trays than the youngest band can choose among.',
  'value-unfit': 'A value is of the wrong sort, too small, too large or too long.',
  'visit-held': 'A station goes beyond what is planned for: the visit is not ready until that is mended.',
  'visit-refused': 'A station asks of children, or of a place, what is never done.',
  'vouch-needless': 'A block vouches for what is worked out from the activity itself.',
  'wants-rise': 'A second of a good is worth more than the first: wants may only fall.',
  'word-unknown': 'A word is not one of those that may stand there.',
  'world-too-large': 'So much can happen at a gathering that not all of it could be looked at.',
  'world-trivial': 'The aim is one swap away, or reached whatever one swaps.',
  'world-unmade': 'No gathering that fits could be made from what is asked for.',
  'world-unsolvable': 'No chain of swaps leads to the aim.',
  'yaml-unreadable': 'The lines of keys and values cannot be read as they stand.',
};
