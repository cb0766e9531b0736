const MOST_BYTES = 1_000_000;

/** The text of a file, with one kind of line end and no byte-order mark; null where it is no text. */
export async function readTextFile(file: Blob): Promise<string | null> {
  if (file.size > MOST_BYTES) return null;
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(await file.arrayBuffer());
    return text.includes('\0') ? null : text.replaceAll(/\r\n?/g, '\n');
  } catch {
    return null;
  }
}
