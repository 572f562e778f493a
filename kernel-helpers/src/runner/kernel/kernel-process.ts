import { spawn } from 'node:child_process';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';

/** What the guard inside a kernel tells the runner: that tslab wants its ports, or how a cell failed. */
export type GuardEvent = { event: 'ports' } | { event: 'failed'; line?: string; plain: boolean };

/** A kernel's process, from its start to its end. */
export interface KernelProcess {
  readonly pid: number;
  /** Settles when the process has ended, with how it ended in words. */
  readonly ended: Promise<string>;
  /** Tells the guard that the ports are free. */
  portsFree(): void;
  /** Interrupts the running cell, where the system has a way to do so. */
  interrupt(): void;
  /** Ends the process, and all that it started, at once. */
  kill(): void;
}

/** The command that starts tslab with this connection file. */
export function tslabCommand(connectionFile: string): string[] {
  const ahead = ['./kernel-output.cjs', './kernel-guard.cjs'].map((name) =>
    fileURLToPath(new URL(name, import.meta.url)),
  );
  const tslab = dirname(createRequire(import.meta.url).resolve('tslab/package.json'));
  const flags = ['--disable-warning=ExperimentalWarning', ...ahead.flatMap((file) => ['--require', file])];
  return [process.execPath, ...flags, join(tslab, 'bin', 'tslab'), 'kernel', '--config-path', connectionFile];
}

const MARK = '\u0001kernel-guard ';
// All that tslab says when it cannot take a port; it then lives on, deaf.
const UNHANDLED = /^(UnhandledPromiseRejection|UncaughtException):/;
// Characters of a line of those last words.
const LINE = 300;
const windows = process.platform === 'win32';
const alive = new Set<KernelProcess>();

// For a runner that ends by itself; a kernel whose runner was killed is ended by its guard.
process.on('exit', () => {
  for (const kernel of alive) kernel.kill();
});

/** Starts a kernel's process; `onEvent` gets what its guard says. */
export function startProcess(
  [program, ...args]: string[],
  options: { cwd: string; env?: Record<string, string | undefined>; onEvent: (event: GuardEvent) => void },
): KernelProcess {
  const child = spawn(program as string, args, {
    cwd: options.cwd,
    env: { ...process.env, ...options.env },
    stdio: ['pipe', 'ignore', 'pipe'],
    // A group of its own: Ctrl-C in the terminal is the runner's to answer, and what a sheet starts ends with its kernel.
    detached: !windows,
    windowsHide: true,
  });
  let over = false;
  const stderrTail: string[] = [];
  const kernel: KernelProcess = {
    pid: child.pid ?? 0,
    ended: new Promise<string>((resolve) => {
      child.once('error', (error) => resolve(`it could not be started: ${error.message}`));
      child.once('close', (code, signal) =>
        resolve(
          [`it ended ${signal ? `by ${signal}` : `with exit code ${code}`}`, ...withoutSource(stderrTail)].join('\n'),
        ),
      );
    }),
    portsFree: () => child.stdin.write('\n'),
    interrupt() {
      if (!windows && !over) child.kill('SIGINT');
    },
    kill() {
      if (!over) endGroup(child.pid);
    },
  };
  // It may have ended by itself and left behind what the sheet started.
  child.once('exit', () => endGroup(child.pid));
  void kernel.ended.then(() => {
    over = true;
    alive.delete(kernel);
  });
  alive.add(kernel);

  child.stdin.on('error', () => undefined);
  createInterface({ input: child.stderr }).on('line', (line) => {
    if (line.startsWith(MARK)) return options.onEvent(JSON.parse(line.slice(MARK.length)));
    stderrTail.push(line.slice(0, LINE));
    if (stderrTail.length > 20) stderrTail.shift();
    if (UNHANDLED.test(line)) kernel.kill();
  });
  return kernel;
}

/** Node's last words without the source line that it puts, with a caret below it, ahead of an error nobody caught. */
function withoutSource(words: string[]): string[] {
  const place = words.findIndex((line) => /^\S.*:\d+$/.test(line));
  const error = words.indexOf('', place);
  return place < 0 || error < 0 ? words : words.toSpliced(place, error - place + 1);
}

function endGroup(pid: number | undefined): void {
  if (!pid) return;
  try {
    process.kill(windows ? pid : -pid, 'SIGKILL');
  } catch {
    // Nothing of it is left.
  }
}
