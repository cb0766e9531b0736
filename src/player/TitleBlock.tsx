import type { LessonView } from './lesson-view.ts';

export type Head = Pick<LessonView, 'title' | 'site' | 'invented' | 'particulars'>;

/** The block at the head of a sheet; a paper says which part it is. */
export function TitleBlock({ title, site, invented, particulars, part }: Head & { readonly part?: string }) {
  return (
    <header class="title-block">
      <div>
        <p class="small">
          {site} {invented !== null && <em class="quiet">{invented}</em>}
        </p>
        <h1>{title}</h1>
        {part !== undefined && <p>{part}</p>}
      </div>
      <dl class="particulars">
        {particulars.map(({ name, value }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </header>
  );
}
