import { useStore } from '@nanostores/preact';
import { $progress } from '../stores/progress.ts';

interface Props {
  readonly label: string;
  readonly parts: readonly {
    readonly id: string;
    readonly name: string;
    readonly href: string;
    readonly isActivity: boolean;
  }[];
}

/** A ranging rod at the edge of the sheet: one band a part of the lesson, filled as far down as one has come. */
export function Rod({ label, parts }: Props) {
  const progress = useStore($progress);
  const shares = parts.map(({ id, isActivity }) => (isActivity ? (progress[id] ?? 0) : null));
  const nextActivity = shares.findIndex((share) => share !== null && share < 1);
  return (
    <nav class="rod" aria-label={label}>
      <ol>
        {parts.map((part, index) => {
          const share = shares[index];
          const isPast = nextActivity === -1 || index < nextActivity;
          const state = (share === null ? isPast : share === 1)
            ? 'done'
            : index === nextActivity
              ? 'here'
              : 'ahead';
          return (
            <li key={part.id} class="rod-band" data-state={state}>
              <svg class="rod-fill" viewBox="0 0 10 100" preserveAspectRatio="none" aria-hidden="true">
                <rect width="10" height={state === 'done' ? 100 : Math.round((share ?? 0) * 100)} />
              </svg>
              <a href={part.href}>{part.name}</a>
            </li>
          );
        })}
      </ol>
    </nav>
  );
}
