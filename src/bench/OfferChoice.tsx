import type { Offer } from './protocol.ts';

interface Props {
  readonly label: string;
  readonly offers: readonly Offer[];
  readonly value: string;
  readonly choose: (value: string) => void;
}

/** One of the words on offer, by what it means. */
export function OfferChoice({ label, offers, value: chosen, choose }: Props) {
  return (
    <label>
      {label}
      <select
        class="form-value"
        value={chosen}
        onChange={({ currentTarget }) => {
          choose(currentTarget.value);
        }}
      >
        {offers.map(({ value, means }) => (
          <option key={value} value={value}>
            {means}
          </option>
        ))}
      </select>
    </label>
  );
}
