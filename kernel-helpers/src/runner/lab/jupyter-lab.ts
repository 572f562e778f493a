import { spawn } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { mkdirSync, openSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as after } from 'node:timers/promises';
import { ShopError } from '../../measure/shop-error.js';
import type { PythonEnvironment } from './python-environment.js';

/** A running JupyterLab. */
export interface JupyterLab {
  /** Address to open, its token included. */
  address: string;
  /** Comes when the server has ended, however that came. */
  ended: Promise<void>;
  /** Ends the server and its kernels, by force when they take longer than 20 s. */
  stop(): void;
}

/**
 * Starts JupyterLab on 127.0.0.1, at port 8888 or the next free one, with a token of its own.
 *
 * Its root is the project, not worksheets/, since the commissions in data/ are opened in it too.
 *
 * @param root  the project's folder
 * @param environment  from `pythonEnvironment`
 * @param start.openBrowser  whether the page is to open by itself
 * @param start.opens  what it opens: a path from `root`, parted by `/`
 * @throws ShopError  when the server ends before it has started, with its last words
 */
export async function startJupyterLab(
  root: string,
  environment: PythonEnvironment,
  { openBrowser, opens }: { openBrowser: boolean; opens: string },
): Promise<JupyterLab> {
  const page = `/lab/tree/${opens.split('/').map(encodeURIComponent).join('/')}`;
  const token = randomBytes(24).toString('hex');
  const log = join(root, '.jupyter', 'lab.log');
  mkdirSync(join(root, '.jupyter'), { recursive: true });
  const output = openSync(log, 'w');
  const settings = [
    `--ServerApp.root_dir=${root}`,
    '--ServerApp.ip=127.0.0.1',
    '--ServerApp.port=8888',
    '--ServerApp.port_retries=100',
    `--ServerApp.open_browser=${openBrowser ? 'True' : 'False'}`,
    '--ServerApp.answer_yes=True',
    `--LabApp.default_url=${page}`,
    '--KernelSpecManager.allowed_kernelspecs=tslab',
    '--KernelSpecManager.ensure_native_kernel=False',
    // Whoever runs as root, as in a container, has chosen so.
    ...(process.getuid?.() === 0 ? ['--allow-root'] : []),
  ];
  const server = spawn(environment.python, [join(root, 'kernel-helpers', 'jupyter', 'lab.py'), ...settings], {
    cwd: root,
    env: { ...environment.variables, JUPYTER_TOKEN: token },
    stdio: ['pipe', output, output],
    // Out of reach of the terminal's own Ctrl-C, which would reach the kernels' server twice.
    detached: process.platform !== 'win32',
  });
  let running = true;
  const ended = new Promise<void>((resolve) => {
    const end = () => {
      running = false;
      resolve();
    };
    server.on('close', end).on('error', end);
  });

  let port: number | undefined;
  while (running && port === undefined) {
    await Promise.race([ended, after(100)]);
    port = portOf(token, environment);
  }
  if (port === undefined) {
    const words = readFileSync(log, 'utf8').trim().split('\n').slice(-5).join('\n');
    throw new ShopError(`JupyterLab ended before it had started; its last words, from ${log}:\n${words}`);
  }
  return {
    address: `http://127.0.0.1:${port}${page}?token=${token}`,
    ended,
    stop() {
      server.stdin?.end();
      setTimeout(() => server.kill('SIGKILL'), 20_000).unref();
    },
  };
}

/** The server writes a file about itself once it listens; the token tells which is ours. */
function portOf(token: string, { variables }: PythonEnvironment): number | undefined {
  const folder = variables.JUPYTER_RUNTIME_DIR ?? '';
  let names: string[] = [];
  try {
    names = readdirSync(folder).filter((name) => /^jpserver-\d+\.json$/.test(name));
  } catch {
    // Not there before the first server starts.
  }
  for (const name of names) {
    try {
      const server = JSON.parse(readFileSync(join(folder, name), 'utf8'));
      if (server.token === token) return server.port;
    } catch {
      // Half written, or gone since: the next look will tell.
    }
  }
  return undefined;
}
