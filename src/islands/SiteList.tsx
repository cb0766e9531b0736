import type { SiteView } from '../../shared/assemblage/index.ts';
import { say } from '../../shared/words/index.ts';
import { likenessText, pitNumber, type CompareWords } from '../../shared/telling/compare-words.ts';
import { siteLines } from '../../shared/telling/site-lines.ts';

interface Props {
  readonly words: CompareWords;
  readonly site: SiteView;
  /** The top of the scale of likeness. */
  readonly most: number;
  readonly nameOf: (kind: string) => string;
  /** On paper nothing folds. */
  readonly isOpen?: boolean;
}

/** The whole site: which three pits share most, which kinds keep company, in what order neighbours are alike. */
export function SiteList({ words, site, most, nameOf, isOpen = false }: Props) {
  const { seriation } = site;
  return (
    <details class="working site-list" open={isOpen}>
      <summary>{say(words.siteTitle)}</summary>
      <ul class="free">
        {siteLines(words, site, nameOf).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      {seriation !== null && (
        <div class="compare-scroll" tabIndex={0} role="group" aria-label={say(words.siteTitle)}>
          <table class="seriation numbers small">
            <caption>{say(words.siteOrder, { breaks: seriation.breaks })}</caption>
            <thead>
              <tr>
                <td />
                {seriation.pits.map((pit) => (
                  <th key={pit} scope="col">
                    {pitNumber(pit)}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {seriation.matrix.map((row, index) => (
                <tr key={seriation.pits[index]}>
                  <th scope="row">{pitNumber(seriation.pits[index])}</th>
                  {row.map((value, column) => (
                    <td key={seriation.pits[column]} data-alike={Math.min(4, Math.floor((5 * value) / most))}>
                      {index === column ? '–' : likenessText(value, most)}
                    </td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
    </details>
  );
}
