/** What a pack's policy lets run, by hash. */
export interface PolicyHashes {
  /** SHA-256 of the script as `scriptText` gives it, in base64. */
  readonly script: string;
  /** SHA-256 of the styles as `styleText` gives them, in base64. */
  readonly style: string;
  /** The styles carry their own type faces. */
  readonly hasFonts: boolean;
}

/**
 * The policy of a pack: one script and one style sheet, drawings inside the page, and no request of any kind.
 *
 * @example pagePolicy({ script: 'AA=', style: 'BB=', hasFonts: false }).startsWith("default-src 'none'; script-src 'sha256-AA='") // true
 */
export const pagePolicy = ({ script, style, hasFonts }: PolicyHashes): string =>
  [
    "default-src 'none'",
    `script-src 'sha256-${script}'`,
    `style-src 'sha256-${style}'`,
    'img-src data:',
    ...(hasFonts ? ['font-src data:'] : []),
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
