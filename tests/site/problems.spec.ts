import { execFileSync, spawn } from 'node:child_process';
import { cpSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from './page-under-test.ts';

const PORT = 4330;

test('a lesson with errors leaves the rest of the site standing and says what to mend', async ({ page }) => {
  test.setTimeout(180_000);
  const folder = mkdtempSync(join(tmpdir(), 'pitlore-broken-'));
  cpSync('content', join(folder, 'content'), { recursive: true });
  writeFileSync(
    join(folder, 'content/lessons/broken.md'),
    '---\ntitle: Broken on purpose\nsite: wendel-marsh\nbands: [7-9]\nminutes: 20\n---\n```sort\ntitle: x\nfinds: { pit: P3 }\nby: made-by\ntrays: [grond, flaked]\nminutes: 9\n```\n',
  );
  execFileSync('npx', ['astro', 'build', '--outDir', join(folder, 'dist')], {
    env: { ...process.env, PITLORE_CONTENT: join(folder, 'content') },
    stdio: 'pipe',
  });
  const server = spawn('node', ['tests/site/serve.ts', String(PORT), join(folder, 'dist')]);
  try {
    await expect(async () => {
      await page.goto(`http://localhost:${PORT}/`);
    }).toPass({ timeout: 15_000 });
    await expect(page.getByRole('link', { name: 'Who made this?' })).toBeVisible();
    await page.getByRole('link', { name: 'Broken on purpose' }).click();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Broken on purpose');
    await expect(page.locator('.problem').first()).toContainText('write "wendle-marsh"');
    await expect(page.locator('.problem').first()).toContainText('Line 3');
  } finally {
    server.kill();
  }
});
