/** A line on which equal steps multiply, in the unit that is shown. */
export interface ShownLine {
  readonly from: number;
  readonly to: number;
}

/** How far along a value lies, 0 to 1; beyond an end it is held at that end. */
export const placeOf = ({ from, to }: ShownLine, value: number): number =>
  Math.max(0, Math.min(1, Math.log(value / from) / Math.log(to / from)));

/** The same as SVG writes it. @example percentOf({ from: 1, to: 100 }, 10) // '50%' */
export const percentOf = (line: ShownLine, value: number): string =>
  `${Number((100 * placeOf(line, value)).toFixed(2))}%`;

export const valueAt = ({ from, to }: ShownLine, place: number): number => from * (to / from) ** place;

const ten = (power: number, digit: number): number =>
  power < 0 ? Number((digit / 10 ** -power).toPrecision(3)) : digit * 10 ** power;

/** Round numbers along a line, its ends among them. */
function roundNumbers({ from, to }: ShownLine, digits: readonly number[]): number[] {
  const numbers: number[] = [];
  for (let power = Math.floor(Math.log10(from)); 10 ** power <= to; power += 1) {
    for (const digit of digits) {
      const number = ten(power, digit);
      if (number >= from * 0.999 && number <= to * 1.001) numbers.push(number);
    }
  }
  return numbers;
}

/** The values a mark can step to. */
const stepsOn = (line: ShownLine): readonly number[] =>
  roundNumbers(line, [1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8]);

/** A mark on the scale; on a long line only some have their number, so that it can be read on a phone. */
export interface ScaleMark {
  readonly value: number;
  readonly isNumbered: boolean;
}

const MOST_NUMBERED = 6;
const CLEAR = 0.17;

export function marksOn(line: ShownLine): readonly ScaleMark[] {
  const marks = roundNumbers(line, [1, 2, 5]);
  const ends = [marks[0] ?? line.from, marks.at(-1) ?? line.to];
  const isFull = marks.length <= MOST_NUMBERED;
  const isClear = (value: number): boolean =>
    ends.every((end) => Math.abs(placeOf(line, value) - placeOf(line, end)) > CLEAR);
  return marks.map((value) => ({
    value,
    isNumbered: isFull || ends.includes(value) || (Number.isInteger(Math.log10(value)) && isClear(value)),
  }));
}

/** The round value nearest by ratio. */
export const nearestStep = (line: ShownLine, value: number): number =>
  stepsOn(line).reduce((best, step) =>
    Math.abs(Math.log(step / value)) < Math.abs(Math.log(best / value)) ? step : best,
  );

/** The next round value, up or down; at an end the end itself. */
export function stepFrom(line: ShownLine, value: number, way: 1 | -1): number {
  const steps = stepsOn(line);
  return (
    (way > 0 ? steps.find((step) => step > value * 1.001) : steps.findLast((step) => step < value * 0.999)) ??
    (way > 0 ? line.to : line.from)
  );
}
