import type { Framework } from '../curriculum/index.ts';
import { caseWords } from '../words/en/case.ts';

type Stage = Framework['stages'][number];

/** The place of a grade among PK (−1), KG (0) and 01 to 12; null for any other word. */
function placeOf(level: string): number | null {
  const word = level.trim().toUpperCase();
  if (word === 'PK') return -1;
  if (word === 'KG' || word === 'K') return 0;
  return /^0?[1-9]$|^1[0-2]$/.test(word) ? Number(word) : null;
}

const nameOf = (place: number): string => (place === -1 ? 'PK' : place === 0 ? 'K' : String(place));

/**
 * The stage that the grades of an item make, from the youngest to the oldest: KG is from age 5, grade 1 from 6, and so
 * on (common practice in the United States, FM). Null where a word is no grade, or there is none.
 *
 * @example gradeStage(['03', '04', '05']) // { id: '3-5', label: 'Grades 3-5', from: 8, to: 11 }
 */
export function gradeStage(levels: readonly string[]): Stage | null {
  const places = levels.map(placeOf);
  const known = places.filter((place) => place !== null);
  if (known.length === 0 || known.length < places.length) return null;
  const [first, last] = [Math.min(...known), Math.max(...known)];
  const [from, to] = [nameOf(first), nameOf(last)];
  const id = (from === to ? from : `${from}-${to}`).toLowerCase();
  return { id, label: caseWords.grade(from, to), from: first + 5, to: last + 6 };
}
