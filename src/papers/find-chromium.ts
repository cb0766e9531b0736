import { constants } from 'node:fs';
import { access } from 'node:fs/promises';
import { delimiter, join } from 'node:path';

/** Programs of the Chromium family, as folders of programs name them. */
const NAMES = [
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'microsoft-edge',
] as const;

/** Where installers of other systems put them. From memory. */
const PLACES = [
  '/usr/bin/chromium',
  '/snap/bin/chromium',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
] as const;

const runs = (path: string): Promise<boolean> =>
  access(path, constants.X_OK).then(
    () => true,
    () => false,
  );

/**
 * The browser that prints: the one CHROMIUM_PATH names, and then no other; else the first of the usual names on the path
 * or of the usual places. Null where there is none.
 */
export async function lookUpChromium(environment: NodeJS.ProcessEnv): Promise<string | null> {
  const named = environment['CHROMIUM_PATH'];
  const onPath = (environment['PATH'] ?? '')
    .split(delimiter)
    .filter((folder) => folder !== '')
    .flatMap((folder) => NAMES.map((name) => join(folder, name)));
  for (const path of named === undefined ? [...onPath, ...PLACES] : [named]) {
    if (await runs(path)) return path;
  }
  return null;
}
