import type { NotesBlock, NotesCell, NotesDocument } from './blocks.ts';

/** Marks that Markdown would read as its own are written with a backslash before them. */
const plain = (words: string): string =>
  words
    .replaceAll(/\s+/g, ' ')
    .replaceAll(/[\\`*_[\]<>~|]|&(?=#?\w+;)/g, String.raw`\$&`)
    .trim();

/** A line of its own must not begin like a heading, a list or a rule. */
const line = (words: string): string => plain(words).replace(/^(\d+)([.)])|^([#+=-])/, String.raw`$1\$2$3`);

const cellText = ({ text, more = [] }: NotesCell): string =>
  [text, ...more]
    .map(plain)
    .filter((words) => words !== '')
    .join(' · ');

const row = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;

function block(given: NotesBlock): readonly string[] {
  switch (given.block) {
    case 'text':
      return [given.isStrong === true ? `**${plain(given.text)}**` : line(given.text)];
    case 'heading':
      return [`### ${plain(given.text)}`];
    case 'list':
      return [
        given.items
          .map((item, index) => `${given.isOrdered === true ? `${index + 1}.` : '-'} ${line(item)}`)
          .join('\n'),
      ];
    case 'terms':
      return [
        given.terms
          .map(({ term, means, older }) => {
            const both = older === undefined ? means : `${means} / ${older}`;
            return `- **${plain(term)}**: ${plain(both)}`;
          })
          .join('\n'),
      ];
    case 'table':
      return [
        [
          row(given.heads.map(plain)),
          row(given.heads.map(() => '---')),
          ...given.rows.map((cells) => row(cells.map(cellText))),
        ].join('\n'),
      ];
    case 'pit':
      return [line(given.sectionCaption)];
    default:
      return given satisfies never;
  }
}

/**
 * Teacher notes as plain Markdown with tables, and no HTML in it. Drawings are left out: the cells say what they show.
 *
 * @example writeMarkdown(teacherNotes(plan, library)).startsWith('# ') // true
 */
export function writeMarkdown({ title, part, site, particulars, caution, sections }: NotesDocument): string {
  const facts = particulars.map(({ name, value }) => `- **${plain(name)}**: ${plain(value)}`).join('\n');
  const pieces = [
    `# ${plain(title)}`,
    `${plain(part)}. ${plain(site)}.`,
    facts,
    `**${plain(caution)}**`,
    ...sections.flatMap((section) => [
      `## ${plain(section.aside === undefined ? section.title : `${section.title} – ${section.aside}`)}`,
      ...section.blocks.flatMap(block),
    ]),
  ];
  return `${pieces.join('\n\n')}\n`;
}
