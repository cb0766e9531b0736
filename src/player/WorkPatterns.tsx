/** Patterns that stay apart on a photocopy: `WorkPatterns.astro` in a pack. */
export function WorkPatterns({ id }: { readonly id: string }) {
  return (
    <defs>
      <pattern id={`${id}-get`} width="6" height="6" patternUnits="userSpaceOnUse">
        <circle class="work-dot" cx="2" cy="2" r="1" />
      </pattern>
      <pattern id={`${id}-flake`} width="8" height="8" patternUnits="userSpaceOnUse">
        <rect class="work-dark" width="8" height="8" />
      </pattern>
      <pattern id={`${id}-grind`} width="7" height="7" patternUnits="userSpaceOnUse">
        <path class="work-line" d="M-1 8 L8 -1 M-1 1 L1 -1 M6 8 L8 6" />
      </pattern>
      <pattern id={`${id}-haft`} width="7" height="7" patternUnits="userSpaceOnUse">
        <path class="work-line" d="M0 3.5 H7" />
      </pattern>
    </defs>
  );
}
