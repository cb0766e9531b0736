const two = (number: number): string => String(number).padStart(2, '0');

/** Minutes after midnight as hours and minutes. @example tellClock(570) // '09:30' */
export const tellClock = (minute: number): string => `${two(Math.floor(minute / 60))}:${two(minute % 60)}`;
