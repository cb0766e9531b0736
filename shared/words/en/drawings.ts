/** The words of the sheet of drawings. */
export const drawings = {
  title: 'Drawings',
  lead: 'Every type of find as it is drawn here, small, middling and large, from nothing but what is recorded of it: type, size, state. No two are alike, and a find always looks like itself.',
  rules: [
    'Light falls from the upper left (Green, Illustrating Lithics, introduction).',
    'Flakes and blades stand with the struck end down; a dot marks it (Martingell & Saville 1988, from memory).',
    'Axes stand edge down, arrowheads point up: our rule, where practice differs.',
    'The edge stands to the right of the face; a section is hatched, and ticks show where it is cut (Addington 1986; Inizan 1999, from memory).',
    'A bar in every large drawing gives its scale. Screens differ, so nothing here is life size.',
  ],
  steps: 'Steps of making an axe',
  weights: 'Print this page to see line weights on paper; change to dark to see them reversed.',
} as const;
