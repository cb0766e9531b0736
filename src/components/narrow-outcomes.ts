/** The marks on each outcome by which a list is narrowed; also the names of the choices and of what a link carries. */
const MARKS = ['framework', 'age', 'subject', 'kind'] as const;

type Chosen = Readonly<Record<string, string>>;

/** A row's mark holds what is chosen; each mark is a list parted by bars. */
const isShown = ({ dataset }: HTMLElement, chosen: Chosen): boolean =>
  MARKS.every((mark) => {
    const wanted = chosen[mark] ?? '';
    return wanted === '' || (dataset[mark] ?? '').split('|').includes(wanted);
  });

/** Hides what holds no shown outcome: groups, and whole frameworks. */
function hideEmpty(within: ParentNode): void {
  for (const part of within.querySelectorAll<HTMLElement>('[data-holds-outcomes]'))
    part.hidden = part.querySelector('[data-outcome]:not([hidden])') === null;
  for (const entry of within.querySelectorAll<HTMLElement>('[data-leads-to]'))
    entry.hidden = document.getElementById(entry.dataset['leadsTo'] ?? '')?.hidden === true;
}

/**
 * Lets a reader narrow the list of outcomes by framework, age, subject and kind of activity. What is chosen stands in
 * the address, so that a link or a print of it says the same. Without script the whole list is there.
 */
export function narrowOutcomes(form: HTMLFormElement, told: HTMLElement): void {
  const rows = [...document.querySelectorAll<HTMLElement>('[data-outcome]')];
  const template = told.dataset['told'] ?? '';
  const choices = [...form.querySelectorAll('select')];

  const show = (): void => {
    const chosen = Object.fromEntries(choices.map(({ name, value }) => [name, value]));
    for (const row of rows) row.hidden = !isShown(row, chosen);
    hideEmpty(document);
    const shown = rows.filter(({ hidden }) => !hidden);
    const counts = {
      count: shown.length,
      all: rows.length,
      met: shown.filter(({ dataset }) => dataset['met'] !== undefined).length,
    };
    const by = choices.flatMap(({ value, selectedOptions: [option] }) =>
      value === '' ? [] : [option?.text],
    );
    const said = Object.entries(counts).reduce(
      (text, [place, count]) => text.replace(`{${place}}`, String(count)),
      template,
    );
    told.textContent = by.length === 0 ? said : `${by.join(', ')}. ${said}`;
  };
  const keep = (): void => {
    const link = new URLSearchParams(
      choices.flatMap(({ name, value }) => (value === '' ? [] : [[name, value]])),
    );
    const { pathname } = window.location;
    history.replaceState(null, '', link.size === 0 ? pathname : `${pathname}?${link}`);
  };
  const recall = (): void => {
    const link = new URLSearchParams(window.location.search);
    for (const choice of choices) {
      const wanted = link.get(choice.name) ?? '';
      choice.value = [...choice.options].some(({ value }) => value === wanted) ? wanted : '';
    }
  };
  form.addEventListener('change', () => {
    show();
    keep();
  });
  form.addEventListener('reset', () => {
    // The choices are emptied after this event, not before.
    queueMicrotask(() => {
      for (const choice of choices) choice.value = '';
      show();
      keep();
    });
  });
  form.addEventListener('submit', (event) => event.preventDefault());
  recall();
  show();
  form.hidden = false;
}
