import type { Entry } from '../entry.ts';

/** How to hold a piece: common practice of handling tables, no source. */
const hold = {
  look: {
    bands: { '4-5': 'Look. Do not touch.', '5-7': 'Look. Do not touch.' },
    otherwise: 'Look only: it stays in its case.',
  },
  touchHeld: {
    bands: {
      '4-5': 'The adult holds it. Put one finger on the flat side.',
      '5-7': 'The adult holds it. Put one finger on the flat side.',
    },
    otherwise: 'The adult keeps hold. Lay one fingertip on the flat face.',
  },
  sharp: 'Flat on your palm, low over the tray. Hold it by its faces, never by an edge.',
  fragile: {
    bands: {
      '4-5': 'Two hands, low over the tray. Do not squeeze.',
      '5-7': 'Two hands, low over the tray. Do not squeeze.',
    },
    otherwise: 'Both hands, low over the tray. It is old and can break: do not squeeze.',
  },
  large: 'Both hands, low over the tray.',
  plain: {
    bands: {
      '4-5': 'On your flat hand, low over the tray.',
      '5-7': 'On your flat hand, low over the tray.',
    },
    otherwise: 'On your flat palm, low over the tray.',
  },
} as const satisfies Readonly<Record<string, Entry>>;

/** What to look for, by who or what made it. */
const look = {
  flaked: {
    bands: { '4-5': 'Can you see a ring?', '5-7': 'Can you see rings, as in water?' },
    otherwise: 'Look for rings, as in water. Where did the blow fall?',
  },
  ground: {
    bands: { '4-5': 'Find the smooth side.', '5-7': 'Find the smooth side.' },
    otherwise: 'Find the smooth face. Which way do its fine lines run?',
  },
  carved: {
    bands: { '4-5': 'Can you see thin lines?', '5-7': 'Can you see thin lines?' },
    otherwise: 'Look for fine cuts. Where has it been worn?',
  },
  cut: {
    bands: { '4-5': 'Where was it cut?', '5-7': 'Where was it cut?' },
    otherwise: 'Find where it was cut. What is left as it grew?',
  },
  fired: {
    bands: { '4-5': 'What colours can you see?', '5-7': 'Look at the broken side. What colours are there?' },
    otherwise: 'Look at the broken side. Is it one colour right through?',
  },
  twisted: 'Count the strands. Which way do they turn?',
  burnt: {
    bands: { '4-5': 'Can you see rings?', '5-7': 'Can you see the rings of a tree?' },
    otherwise: 'Look for the rings of the wood.',
  },
  moulded: 'Is it the same all along?',
  machine: 'Is it the same all along?',
  natural: {
    bands: { '4-5': 'Can you see a mark?', '5-7': 'Did a hand make a mark on it?' },
    otherwise: 'Is there any mark that a person made?',
  },
  copy: {
    bands: { '4-5': 'Look all round it.', '5-7': 'Turn it round. What is its shape?' },
    otherwise: 'Hold it beside the drawing. What does the copy not show?',
  },
} as const satisfies Readonly<Record<string, Entry>>;

/** What to feel for, by what it is made of. */
const feel = {
  usual: {
    bands: { '4-5': 'Smooth or rough?', '5-7': 'Smooth or rough? Cold or warm?' },
    otherwise: 'Smooth or rough? Cold or warm? Heavier than it looks?',
  },
  touchHeld: 'Is it cold or warm? Is it smooth or rough?',
  sharp: 'Rest one finger on the flat face. Keep it still. Smooth or rough?',
  copy: {
    bands: { '4-5': 'Where do your fingers go?', '5-7': 'Where does your hand want to hold it?' },
    otherwise: 'Where does your hand want to hold it? Which way does it point?',
  },
  sandstone: {
    bands: { '4-5': 'Find the smooth part.', '5-7': 'Is it like sand? Find the smooth part.' },
    otherwise: 'Feel for grains of sand. Where are they worn smooth?',
  },
  quartzite: {
    bands: { '4-5': 'Is it heavy?', '5-7': 'Is it heavy? Find a rough part.' },
    otherwise: 'Weigh it in your hand. Where is it rough, and where smooth?',
  },
  antler: {
    bands: { '4-5': 'Find the rough part.', '5-7': 'Find the rough part. Find the smooth part.' },
    otherwise: 'Where is it rough as it grew, and where has use made it smooth?',
  },
  pottery: {
    bands: { '4-5': 'Is it flat?', '5-7': 'Feel how it bends. Which side was inside?' },
    otherwise: 'Feel the curve. Which side was the inside of the pot?',
  },
  'plant-fibre': 'Do not pull. Can you feel it twist?',
} as const satisfies Readonly<Record<string, Entry>>;

/** What to listen for: only where the sound says something, and no harm is done. */
const listen = {
  pottery: {
    bands: {
      '4-5': 'Tap it softly with a nail.',
      '5-7': 'Tap it softly with a finger nail. What do you hear?',
    },
    otherwise: 'Tap it softly with a fingernail. Is the sound dull or clear?',
  },
  sandstone: {
    bands: { '4-5': 'Stroke it. What do you hear?', '5-7': 'Stroke it with one finger. What do you hear?' },
    otherwise: 'Stroke it with a fingertip. Where is it loud, and where quiet?',
  },
} as const satisfies Readonly<Record<string, Entry>>;

/** What each sense is asked of a piece, where the lead writes nothing: common practice, no source. */
export const handlePrompts = { hold, look, feel, listen } as const;

export type LookFor = keyof typeof look;
