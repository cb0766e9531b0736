/** Text as HTML shows it, in a text or in a quoted attribute. @example htmlText('a < "b"') // 'a &lt; &quot;b&quot;' */
export const htmlText = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');

/** A value as JSON that can end no block it stands in. @example jsonText({ a: '</script>' }) // '{"a":"\\u003c/script>"}' */
export const jsonText = (value: unknown): string => JSON.stringify(value).replaceAll('<', String.raw`\u003c`);

/**
 * A script as it stands in a page: what would end its block, or open a comment in it, is written otherwise. A page
 * reads no carriage return as such, so none is left. Said twice it changes nothing: the hash is taken of this text.
 *
 * @example scriptText('a = "</script>"') // 'a = "\\x3c/script>"'
 */
export const scriptText = (script: string): string =>
  script.replaceAll(/\r\n?/g, '\n').replaceAll(/<(?=!--|\/?script)/gi, String.raw`\x3c`);

/** A style sheet as it stands in a page. @example styleText('p::after { content: "</style>" }') // 'p::after { content: "<\\/style>" }' */
export const styleText = (css: string): string =>
  css.replaceAll(/\r\n?/g, '\n').replaceAll(/<\/(?=style)/gi, String.raw`<\/`);
