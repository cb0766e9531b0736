import type { Counts } from '../../shared/assemblage/index.ts';

// Wendle Marsh is invented. Which kinds of Late Neolithic find lie in which of its nine pits: a 1 for each pit, 1 to 9.
const KIND_ROWS: Readonly<Record<string, string>> = {
  'antler pick': '000001000',
  'axe roughout': '010000000',
  blade: '100010100',
  'bone pin': '001110010',
  'burnt flint': '100000100',
  'cattle bone': '100101010',
  'chalk disc': '001010011',
  charcoal: '111111110',
  cordage: '000001000',
  core: '100001001',
  'end scraper': '100101100',
  flake: '111111111',
  'grooved ware sherd': '001110110',
  'ground edge fragment': '000011100',
  hammerstone: '110000100',
  'hazelnut shells': '101110100',
  'oblique arrowhead': '000000110',
  'pig jaw': '011110010',
  'polished axe': '000000100',
  'polishing stone fragment': '001011010',
  'quern fragment': '000100000',
  'serrated flake': '100001000',
};

/** The presence table of the nine invented pits, written out by hand: a row a pit, a column a kind. */
export const wendleMarsh: Counts = {
  pits: Array.from({ length: 9 }, (_, pit) => String(pit + 1)),
  kinds: Object.keys(KIND_ROWS),
  rows: Array.from({ length: 9 }, (_, pit) => Object.values(KIND_ROWS).map((row) => Number(row[pit]))),
};
