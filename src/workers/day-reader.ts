import { readYaml } from '../../shared/lesson/index.ts';
import { editDay, readDay } from '../../shared/library/index.ts';
import type { ReaderAsk, ReaderReply } from './day-messages.ts';

// Reads and changes day files beside the page: the YAML reader and the schemas are no part of the page's own script.
self.addEventListener('message', ({ data }: MessageEvent<ReaderAsk>) => {
  const { turn, file } = data;
  const text = data.edits.length === 0 ? data.text : editDay(data.text, data.edits);
  const { value, problems } = readDay(file, text);
  const yaml = readYaml(text.replace(/^\uFEFF/, ''));
  const parts = yaml.faults.some(({ code }) => code === 'yaml-unreadable') ? null : (yaml.data ?? {});
  const reply: ReaderReply = { turn, text, problems, day: value, parts };
  self.postMessage(reply);
});
