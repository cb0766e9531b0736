interface Props<Way extends string> {
  readonly label: string;
  readonly ways: readonly { readonly way: Way; readonly name: string; readonly how: string }[];
  readonly chosen: Way;
  readonly onChoose: (way: Way) => void;
}

/** How to play: a row of ways, and what the chosen one asks. */
export function WaysToPlay<Way extends string>({ label, ways, chosen, onChoose }: Props<Way>) {
  return (
    <div class="ways">
      <div class="ways-choice" role="group" aria-label={label}>
        {ways.map(({ way, name }) => (
          <button
            key={way}
            type="button"
            class="ways-way"
            aria-pressed={way === chosen}
            onClick={() => onChoose(way)}
          >
            {name}
          </button>
        ))}
      </div>
      <p class="ways-how">{ways.find(({ way }) => way === chosen)?.how}</p>
    </div>
  );
}
