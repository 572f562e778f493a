import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { join, relative, sep } from 'node:path';
import { createInterface } from 'node:readline';

const root = join(import.meta.dirname, '..', '..');

/** `npm run lab`, started as a person does. */
export interface RunningLab {
  /** Address that opens a sheet in a window of its own. */
  addressOf(sheet: string): string;
  /** Ctrl-C; gives the exit code. */
  stop(): Promise<number | null>;
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
  const { origin, searchParams } = address;
  return {
    addressOf(sheet) {
      const path = relative(root, sheet).split(sep).map(encodeURIComponent).join('/');
      return `${origin}/lab/workspaces/test/tree/${path}?reset&token=${searchParams.get('token')}`;
    },
    async stop() {
      lab.kill('SIGINT');
      const [code] = await ended;
      return code;
    },
  };
}
