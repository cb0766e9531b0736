import { handlingTables } from '../../shared/compile/index.ts';
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

/** One page of a paper for every lesson that compiles and has pieces in the hand. */
export const tablePaperPaths = async () =>
  (await paperPaths()).filter(({ props }) => handlingTables(props.plan).length > 0);
