import { hoursView, unseenRings, type Handover } from '../../shared/bartering/index.ts';
import { say } from '../../shared/words/index.ts';
import { goodWords, nameOf, type BarterProps } from './barter-view.ts';

interface Props extends Pick<BarterProps, 'activity' | 'words'> {
  readonly swaps: readonly Handover[];
}

const hoursWords = (hours: number): string => String(Number(hours.toPrecision(2)));

/** For the oldest: fair by hours, rings that would help all in them, and what a shared token would change. */
export function BarterViews({ activity, words, swaps }: Props) {
  const { world, coincidences } = activity;
  const you = world.pupil.id;
  const rows = hoursView(world, swaps).handovers;
  const rings = unseenRings(world, swaps);
  const cell = (goods: readonly string[], hours: number | null): string => {
    if (goods.length === 0) return say(words.hoursNothing);
    if (hours !== null) return say(words.hoursValue, { hours: hoursWords(hours) });
    const unknown = [...new Set(goods)].filter((good) =>
      world.goods.some(({ id, hours: known }) => id === good && known === null),
    );
    return say(words.hoursUnknown, { things: unknown.map((good) => goodWords(world, good)).join(', ') });
  };
  return (
    <>
      <h4>{say(words.hoursTitle)}</h4>
      <p class="small">{say(words.hoursLead)}</p>
      <table class="record hours">
        <thead>
          <tr>
            <th scope="col">{say(words.hoursWith)}</th>
            <th scope="col">{say(words.hoursYou)}</th>
            <th scope="col">{say(words.hoursThem)}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ handover, givenHours, takenHours }, index) => (
            <tr key={index}>
              <th scope="row">{nameOf(world, handover.with)}</th>
              <td data-label={say(words.hoursYou)}>{cell(handover.give, givenHours)}</td>
              <td data-label={say(words.hoursThem)}>{cell(handover.take, takenHours)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <h4>{say(words.ringTitle)}</h4>
      {rings.length === 0 && <p>{say(words.ringNone)}</p>}
      {rings.map((ring) => (
        <div key={ring[0]?.trader}>
          <p>{say(ring.length > 2 ? words.ringLead : words.ringPair)}</p>
          <ul class="gains">
            {ring.map(({ trader, takes, from }) => (
              <li key={trader}>
                {say(trader === you ? words.ringYou : from === you ? words.ringFromYou : words.ringRow, {
                  name: nameOf(world, trader),
                  thing: goodWords(world, takes),
                  from: nameOf(world, from),
                })}
              </li>
            ))}
          </ul>
        </div>
      ))}
      <h4>{say(words.tokenTitle)}</h4>
      <p>{say(words.tokenLine, { ...coincidences })}</p>
    </>
  );
}
