// What must not compile. The type check of the whole product reads this file; nothing runs it.
import { grams, hours, millimetres, minutes, toHours, toMinutes } from '../../shared/units.ts';
import type { Grams, Hours, Millimetres, Minutes } from '../../shared/units.ts';

const anHour: Hours = hours(1);
const aMinute: Minutes = minutes(1);
const aLength: Millimetres = millimetres(1);
const aMass: Grams = grams(1);

// A unit is still a number to do sums with.
export const sum: number = anHour + aMinute + aLength + aMass;

// @ts-expect-error a plain number says no unit
export const plainHours: Hours = 1;
// @ts-expect-error minutes are not hours
export const minutesAsHours: Hours = aMinute;
// @ts-expect-error hours are not minutes
export const hoursAsMinutes: Minutes = anHour;
// @ts-expect-error a length is no time
export const lengthAsHours: Hours = aLength;
// @ts-expect-error a mass is no time
export const massAsHours: Hours = aMass;
// @ts-expect-error a length is no time
export const lengthAsMinutes: Minutes = aLength;
// @ts-expect-error a mass is no time
export const massAsMinutes: Minutes = aMass;
// @ts-expect-error a mass is no length
export const massAsLength: Millimetres = aMass;
// @ts-expect-error a time is no length
export const hoursAsLength: Millimetres = anHour;
// @ts-expect-error a time is no length
export const minutesAsLength: Millimetres = aMinute;
// @ts-expect-error a length is no mass
export const lengthAsMass: Grams = aLength;
// @ts-expect-error a time is no mass
export const hoursAsMass: Grams = anHour;
// @ts-expect-error a time is no mass
export const minutesAsMass: Grams = aMinute;
// @ts-expect-error minutes are turned into hours, not hours
export const twice: Hours = toHours(anHour);
// @ts-expect-error hours are turned into minutes, not minutes
export const again: Minutes = toMinutes(aMinute);
