import type { Nodes, Root, RootContent } from 'mdast';
import { fromMarkdown } from 'mdast-util-from-markdown';
import { gfmTableFromMarkdown } from 'mdast-util-gfm-table';
import { gfmTable } from 'micromark-extension-gfm-table';
import { defaultSchema, sanitize } from 'hast-util-sanitize';
import { toHtml } from 'hast-util-to-html';
import { toHast } from 'mdast-util-to-hast';

/** Markdown (CommonMark and tables) as a tree with positions. */
export const readMarkdown = (text: string): Root =>
  fromMarkdown(text, { extensions: [gfmTable()], mdastExtensions: [gfmTableFromMarkdown()] });

/** A run of Markdown blocks as clean HTML: scripts, handlers and odd links cannot come through. */
export function writeHtml(children: readonly RootContent[]): string {
  const tree: Root = { type: 'root', children: [...children] };
  return toHtml(sanitize(toHast(tree), defaultSchema)).trim();
}

/** Every node of a tree, the tree itself first, without recursion. */
export function* everyNode(root: Nodes): Generator<{ readonly node: Nodes; readonly depth: number }> {
  const waiting: { readonly node: Nodes; readonly depth: number }[] = [{ node: root, depth: 0 }];
  while (waiting.length > 0) {
    const next = waiting.pop();
    if (next === undefined) return;
    yield next;
    if ('children' in next.node) {
      for (const child of next.node.children.toReversed())
        waiting.push({ node: child, depth: next.depth + 1 });
    }
  }
}
