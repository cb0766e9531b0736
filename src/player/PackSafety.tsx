import type { LessonView } from './lesson-view.ts';

/** What could hurt someone: shut on the screen until the lead opens it, and always there in print. */
export function PackSafety({ title, first, hazards }: LessonView['safety']) {
  return (
    <section class="pack-safety" aria-label={title}>
      <details>
        <summary>{title}</summary>
        <p>
          <strong>{first}</strong>
        </p>
        {hazards.map(({ name, controls, decides }) => (
          <div key={name} class="pack-hazard">
            <h3>{name}</h3>
            <ul>
              {controls.map((control) => (
                <li key={control}>{control}</li>
              ))}
            </ul>
            <p class="small quiet">{decides}</p>
          </div>
        ))}
      </details>
    </section>
  );
}
