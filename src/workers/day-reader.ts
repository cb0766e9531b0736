import { checkDay } from '../../shared/compile/check-day.ts';
import { readYaml } from '../../shared/lesson/index.ts';
import { editDay } from '../../shared/library/index.ts';
import type { SafetyRules } from '../../shared/safety/index.ts';
import type { ReaderAsk, ReaderReply } from './day-messages.ts';

// Reads and changes day files beside the page: the YAML reader and the schemas are no part of the page's own script.
let rules: Promise<SafetyRules> | null = null;

const fetchRules = async (address: string): Promise<SafetyRules> => {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${address}: ${response.status}`);
  // Written by src/pages/day/rules.json.ts of the same build.
  return (await response.json()) as SafetyRules;
};

/** The text with its changes; where they have no place in it, as it is: a form is read from the file again. */
function edited(text: string, edits: ReaderAsk['edits']): string {
  try {
    return edits.length === 0 ? text : editDay(text, edits);
  } catch {
    return text;
  }
}

async function answer({ turn, file, rulesAt, ...asked }: ReaderAsk): Promise<ReaderReply> {
  const text = edited(asked.text, asked.edits);
  rules ??= fetchRules(rulesAt);
  const { value, problems } = checkDay(file, text, await rules);
  const yaml = readYaml(text.replace(/^\uFEFF/, ''));
  const parts = yaml.faults.some(({ code }) => code === 'yaml-unreadable') ? null : (yaml.data ?? {});
  return { turn, text, problems, day: value, parts };
}

self.addEventListener('message', ({ data }: MessageEvent<ReaderAsk>) => {
  void answer(data).then((reply) => {
    self.postMessage(reply);
  });
});
