interface Props {
  readonly seed: number;
  readonly isSurface: boolean;
}

const POINTS = 24;

/** A drawn line between layers: never straight, always the same for the same layer. */
function edge(seed: number): string {
  const heights = Array.from({ length: POINTS + 1 }, (_, point) => {
    const turn = (point + 1) * 1.7 + seed * 2.3;
    return 5 + 2.2 * Math.sin(turn) + 1.4 * Math.sin(turn * 2.61 + 1);
  });
  return heights
    .map((height, point) => `${point === 0 ? 'M' : 'L'}${(100 * point) / POINTS} ${height.toFixed(2)}`)
    .join('');
}

/** The upper edge of a layer, as in a drawn section; the surface is heavier, with its hachures. */
export function LayerEdge({ seed, isSurface }: Props) {
  return (
    <svg class="layer-edge" viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true">
      <path d={edge(seed)} data-surface={isSurface} />
    </svg>
  );
}
