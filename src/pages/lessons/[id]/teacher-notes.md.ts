import type { APIRoute, InferGetStaticPropsType } from 'astro';
import { teacherNotes, writeMarkdown } from '../../../../shared/notes/index.ts';
import { paperPaths } from '../../../loaders/paper-paths.ts';

export const getStaticPaths = paperPaths;

/** The same notes as the page beside it, as plain Markdown. */
export const GET: APIRoute<InferGetStaticPropsType<typeof getStaticPaths>> = ({ props }) =>
  new Response(writeMarkdown(teacherNotes(props.plan, props.library)), {
    headers: { 'content-type': 'text/markdown; charset=utf-8' },
  });
