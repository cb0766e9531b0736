/**
 * The lines that a text has and another had not, and those it has no more, each with `+` or `-` before it; for texts
 * that are nearly the same.
 *
 * @example changedLines('a\nb', 'a\nc\nb') // ['+ c']
 */
export function changedLines(before: string, after: string): readonly string[] {
  const old = before === '' ? [] : before.split(/\r?\n/);
  const told: string[] = [];
  let at = 0;
  for (const line of after.split(/\r?\n/)) {
    const found = old.indexOf(line, at);
    if (found === -1) {
      told.push(`+ ${line}`);
      continue;
    }
    told.push(...old.slice(at, found).map((gone) => `- ${gone}`));
    at = found + 1;
  }
  return [...told, ...old.slice(at).map((gone) => `- ${gone}`)];
}
