const STEP = 6;
const HEIGHT = 18;
const GROUP = 32;

/** Strokes for a count, every fifth across the four before it. @example tallyStrokes(5).width // 32 */
export function tallyStrokes(count: number): {
  readonly width: number;
  readonly height: number;
  readonly path: string;
} {
  const path = Array.from({ length: count }, (_, index) => {
    const left = Math.floor(index / 5) * GROUP + 3;
    const place = index % 5;
    return place === 4
      ? `M${left - 3} ${HEIGHT - 3}L${left + 3 * STEP + 3} 3`
      : `M${left + place * STEP} 2v${HEIGHT - 4}`;
  }).join('');
  return { width: Math.ceil(count / 5) * GROUP, height: HEIGHT, path };
}
