import { siteContent } from './site-content.ts';

/** One page of a paper for every lesson that compiles. */
export async function paperPaths() {
  const { lessons, library } = await siteContent();
  return lessons.flatMap((lesson) =>
    lesson.plan === null
      ? []
      : [{ params: { id: lesson.id }, props: { id: lesson.id, plan: lesson.plan, library } }],
  );
}
