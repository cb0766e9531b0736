import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';

// All that a clean clone must pass, in order, stopping at the first failure; ends with one line for every runner together.
const UNIT = 'test-results/unit.json';
const SITE = 'test-results/site.json';

const STEPS: readonly (readonly [verb: string, ...more: string[]])[] = [
  ['lint'],
  ['types'],
  ['graph'],
  ['dead'],
  ['test', '--', '--reporter=default', '--reporter=json', `--outputFile=${UNIT}`],
  ['build'],
  ['size'],
  ['test:site'],
];

interface UnitReport {
  readonly numPassedTests: number;
  readonly numFailedTests: number;
}

interface SiteReport {
  readonly stats: { readonly expected: number; readonly unexpected: number; readonly flaky: number };
}

/** The browser and the PDF tools come from the system; on a bare Debian machine they are installed. */
function needSystemTools(): boolean {
  const chromium = process.env['CHROMIUM_PATH'] ?? '/usr/bin/chromium';
  const missing = [
    ...(existsSync(chromium) ? [] : ['chromium']),
    ...(existsSync('/usr/bin/pdftotext') ? [] : ['poppler-utils']),
  ];
  if (missing.length === 0) return true;
  if (process.getuid?.() === 0 && existsSync('/usr/bin/apt-get')) {
    spawnSync('apt-get', ['update', '-qq'], { stdio: 'inherit' });
    const installed = spawnSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', ...missing], {
      stdio: 'inherit',
    });
    if (installed.status === 0) return true;
  }
  console.error(
    `The browser tests need ${missing.join(' and ')}. On Debian or Ubuntu run:\n  sudo apt-get install --no-install-recommends ${missing.join(' ')}\nor name your own Chromium: CHROMIUM_PATH=/path/to/chromium npm run ready`,
  );
  return false;
}

/** A runner's own report, written a moment ago; null where it did not come to run. */
const read = (file: string): unknown => (existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : null);

function report(): void {
  // The shapes are those of the pinned runners.
  const unit = read(UNIT) as UnitReport | null;
  const site = read(SITE) as SiteReport | null;
  const passed = (unit?.numPassedTests ?? 0) + (site?.stats.expected ?? 0) + (site?.stats.flaky ?? 0);
  const failed = (unit?.numFailedTests ?? 0) + (site?.stats.unexpected ?? 0);
  console.log(`${passed} passed, ${failed} failed`);
}

mkdirSync('test-results', { recursive: true });
for (const file of [UNIT, SITE]) rmSync(file, { force: true });
let isReady = needSystemTools();
for (const [verb, ...more] of isReady ? STEPS : []) {
  console.log(`\n— ${verb}`);
  const { status } = spawnSync('npm', ['run', '-s', verb, ...more], { stdio: 'inherit' });
  if (status !== 0) {
    console.error(`${verb} failed: everything after it was left out`);
    isReady = false;
    break;
  }
}
report();
process.exitCode = isReady ? 0 : 1;
