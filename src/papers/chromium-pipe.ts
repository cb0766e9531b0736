import { spawn, type ChildProcess } from 'node:child_process';
import type { Readable, Writable } from 'node:stream';
import { papersCommandWords } from '../../shared/words/en/papers-command.ts';

/** A browser spoken to over a pipe: no port is opened. Messages are of its own protocol, each ended by a zero byte. */
export interface Browser {
  /** Sends a command and waits for what it gives back. @throws Error when the browser refuses it or is gone. */
  readonly send: (
    method: string,
    parameters?: Readonly<Record<string, unknown>>,
    session?: string,
  ) => Promise<Readonly<Record<string, unknown>>>;
  /** Waits for something to happen, from now on. @throws Error when the browser is gone. */
  readonly once: (method: string, session: string) => Promise<void>;
  readonly close: () => Promise<void>;
}

interface Message {
  readonly id?: number;
  readonly method?: string;
  readonly sessionId?: string;
  readonly result?: Readonly<Record<string, unknown>>;
  readonly error?: { readonly message: string };
}

interface Waiting {
  readonly resolve: (result: Readonly<Record<string, unknown>>) => void;
  readonly reject: (error: Error) => void;
}

const FLAGS = [
  '--headless=new',
  '--remote-debugging-pipe',
  '--disable-gpu',
  '--disable-background-networking',
  '--disable-component-update',
  '--no-first-run',
  '--no-default-browser-check',
] as const;

function speak(child: ChildProcess): Browser {
  const output = child.stdio[3] as Writable;
  const input = child.stdio[4] as Readable;
  const waiting = new Map<number, Waiting>();
  const awaited: (Waiting & { readonly method: string; readonly session: string })[] = [];
  let told = '';
  let last = 0;
  let rest = Buffer.alloc(0);
  let isGone = false;

  child.stderr?.on('data', (text: Buffer) => (told = (told + text.toString()).slice(-2000)));
  const ended = (): Error => new Error(papersCommandWords.browserEnded(child.spawnfile, told.trim()));
  const gone = (): void => {
    isGone = true;
    for (const { reject } of [...waiting.values(), ...awaited.splice(0)]) reject(ended());
    waiting.clear();
  };
  child.on('error', (error) => {
    told = error.message;
    gone();
  });
  child.on('close', gone);
  output.on('error', gone);

  const take = (message: Message): void => {
    if (message.id !== undefined) {
      const asked = waiting.get(message.id);
      waiting.delete(message.id);
      if (message.error === undefined) asked?.resolve(message.result ?? {});
      else asked?.reject(new Error(message.error.message));
      return;
    }
    for (const each of awaited.splice(0)) {
      if (each.method === message.method && each.session === message.sessionId) each.resolve({});
      else awaited.push(each);
    }
  };
  input.on('data', (part: Buffer) => {
    rest = Buffer.concat([rest, part]);
    for (let end = rest.indexOf(0); end >= 0; end = rest.indexOf(0)) {
      // What the browser says is of its own protocol.
      take(JSON.parse(rest.subarray(0, end).toString()) as Message);
      rest = rest.subarray(end + 1);
    }
  });

  return {
    send: (method, params = {}, sessionId) =>
      new Promise((resolve, reject) => {
        if (isGone) {
          reject(ended());
          return;
        }
        last += 1;
        waiting.set(last, { resolve, reject });
        output.write(
          `${JSON.stringify({ id: last, method, params, ...(sessionId === undefined ? {} : { sessionId }) })}\0`,
        );
      }),
    once: async (method, session) => {
      await new Promise((resolve, reject) => awaited.push({ method, session, resolve, reject }));
    },
    close: async () => {
      if (child.exitCode !== null || isGone) return;
      const closed = new Promise((resolve) => child.on('close', resolve));
      child.kill();
      await closed;
    },
  };
}

/**
 * Starts a browser. Its sandbox is left off only where it says that it cannot start with it.
 *
 * @param profile An empty folder for it to keep things in; the caller clears it away.
 * @throws Error with what the browser said, where it does not start.
 */
export async function startChromium(path: string, profile: string): Promise<Browser> {
  const start = async (more: readonly string[]): Promise<Browser> => {
    const browser = speak(
      spawn(path, [...FLAGS, `--user-data-dir=${profile}`, ...more], {
        stdio: ['ignore', 'ignore', 'pipe', 'pipe', 'pipe'],
      }),
    );
    await browser.send('Browser.getVersion');
    return browser;
  };
  try {
    return await start([]);
  } catch (error) {
    if (!(error instanceof Error) || !/sandbox/i.test(error.message)) throw error;
    return start(['--no-sandbox']);
  }
}
