/**
 * The names along a path, outermost first; null where it leads out of its folder or holds what no name may. Both slashes part
 * names: some systems write the other one.
 *
 * @example innerPath('my-visit\\lessons\\a.md') // ['my-visit', 'lessons', 'a.md']
 * @example innerPath('../a.md') // null
 */
export function innerPath(path: string): readonly [string, ...string[]] | null {
  // Control signs are exactly what is looked for.
  // oxlint-disable-next-line no-control-regex
  if (/^[/\\]|^[a-z]:|[\u0000-\u001f]/i.test(path)) return null;
  const [first, ...rest] = path.split(/[/\\]/).filter((name) => name !== '' && name !== '.');
  if (first === undefined || [first, ...rest].includes('..')) return null;
  return [first, ...rest];
}

/** What systems leave behind in a folder, and our own note of what it is: nothing a lead would miss. */
export const isLeavings = (names: readonly string[]): boolean =>
  names.some((name) => name.startsWith('.') || name === '__MACOSX') ||
  /^(thumbs\.db|desktop\.ini|read-?me(\.(txt|md))?)$/i.test(names.at(-1) ?? '');
