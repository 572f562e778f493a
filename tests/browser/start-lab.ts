import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { join, relative, sep } from 'node:path';
import { createInterface } from 'node:readline';

const root = join(import.meta.dirname, '..', '..');

/** `npm run lab`, started as a person does. */
export interface RunningLab {
  /** Address that opens a sheet in a window of its own. */
  addressOf(sheet: string): string;
  /** Asks the server itself, with its token. */
  request(method: string, path: string, body?: unknown): Promise<Response>;
  /** Ctrl-C; gives the exit code. */
  stop(): Promise<number | null>;
  /** Ends the command without giving it a chance to clean up. */
  kill(): void;
}

export async function startLab(): Promise<RunningLab> {
  const command = join(root, 'kernel-helpers', 'dist', 'command.js');
  const lab = spawn(process.execPath, [command, 'lab', '--no-browser'], { stdio: ['ignore', 'pipe', 'pipe'] });
  const ended = once(lab, 'exit');
  let said = '';
  let address: URL | undefined;
  lab.stderr.on('data', (text) => {
    said += text;
  });
  for await (const line of createInterface({ input: lab.stdout })) {
    said += `${line}\n`;
    const found = /http:\S+/.exec(line);
    if (!found) continue;
    address = new URL(found[0]);
    break;
  }
  if (!address) throw new Error(`JupyterLab did not start:\n${said}`);
  const { origin } = address;
  const token = address.searchParams.get('token');
  return {
    addressOf(sheet) {
      const path = relative(root, sheet).split(sep).map(encodeURIComponent).join('/');
      return `${origin}/lab/workspaces/test/tree/${path}?reset&token=${token}`;
    },
    request(method, path, body) {
      return fetch(`${origin}${path}`, {
        method,
        headers: { Authorization: `token ${token}` },
        body: JSON.stringify(body),
      });
    },
    async stop() {
      lab.kill('SIGINT');
      const [code] = await ended;
      return code;
    },
    kill() {
      lab.kill('SIGKILL');
    },
  };
}
