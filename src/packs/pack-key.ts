import type { Plan } from '../../shared/compile/index.ts';
import { digest } from './digest.ts';

const KEY_DIGITS = 8;

/**
 * What a pack keeps answers under: its lesson's name and a mark of its plan. In some browsers all files of a disk share
 * one store.
 */
export async function packKey(id: string, plan: Plan): Promise<string> {
  const bytes = await digest(JSON.stringify(plan));
  const mark = [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return `pack-${id}-${mark.slice(0, KEY_DIGITS)}`;
}
