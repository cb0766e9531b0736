import { mapOf, shown } from './day-fields.ts';

const minuteOf = (time: string): number | null =>
  /^\d{2}:\d{2}$/.test(time) ? Number(time.slice(0, 2)) * 60 + Number(time.slice(3)) : null;
const two = (number: number): string => String(number).padStart(2, '0');
const clock = (minute: number): string => `${two(Math.floor(minute / 60) % 24)}:${two(minute % 60)}`;

/** A slot after the last: five minutes later, twenty minutes long. @example nextSlot([{ from: '10:00', to: '10:20' }]) // { from: '10:25', to: '10:45' } */
export function nextSlot(slots: readonly unknown[]): { readonly from: string; readonly to: string } {
  const last = minuteOf(shown(mapOf(slots.at(-1))['to'])) ?? 9 * 60 + 25;
  return { from: clock(last + 5), to: clock(last + 25) };
}
