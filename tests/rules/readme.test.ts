import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { compileLesson } from '../../shared/compile/index.ts';
import { readLibrary } from '../../src/loaders/read-library.ts';

const readme = readFileSync('README.md', 'utf8');
const scripts = (JSON.parse(readFileSync('package.json', 'utf8')) as { scripts: Record<string, string> })
  .scripts;

describe('the README', () => {
  test('opens with the job in one paragraph', () => {
    expect(readme.split('\n').slice(0, 10).join(' ')).toMatch(/archaeologist/);
  });

  test('has a lesson that checks clean', async () => {
    const lesson = /`{4}markdown\n([\s\S]*?)\n`{4}/.exec(readme)?.[1];
    expect(lesson).toBeDefined();
    const { library } = await readLibrary('content');
    expect(compileLesson('README.md', lesson ?? '', library, 'readme').problems).toEqual([]);
  });

  test('names only scripts and verbs that there are', () => {
    const named = [...readme.matchAll(/npm run (?:-s )?([\w:]+)/g)].map(([, name]) => name ?? '');
    expect(named.length).toBeGreaterThan(5);
    expect(named.filter((name) => scripts[name] === undefined)).toEqual([]);
    const help = readFileSync('shared/words/en/command.ts', 'utf8');
    const verbs = [...readme.matchAll(/pitlore -- (\w+)/g)].map(([, verb]) => verb ?? '');
    expect(verbs.filter((verb) => !help.includes(`pitlore ${verb}`))).toEqual([]);
  });

  test('gives the second command that CI runs', () => {
    const command = /\*\*Pass every test\*\*[^]*?```sh\n(.+)\n```/.exec(readme)?.[1];
    expect(command).toBe('npm ci && npm run ready');
    expect(readFileSync('.ci/run', 'utf8')).toContain(`\n${command ?? ''}\n`);
  });

  test('stays under 150 lines', () => {
    expect(readme.split('\n').length).toBeLessThan(150);
  });
});
