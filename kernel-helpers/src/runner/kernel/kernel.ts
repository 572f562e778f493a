import type { Channels } from './channels.js';
import type { KernelProcess } from './kernel-process.js';
import { addOutput, type Displays, lostError, type Output } from './outputs.js';

/** How a cell came out. Only `ok` is success: a kernel answers `abort` to a request that it never ran. */
export type CellStatus = 'ok' | 'error' | 'abort' | 'too long' | 'stopped' | 'kernel ended';

/** One run of a cell. */
export interface Execution {
  status: CellStatus;
  /** What the cell showed. Anything it shows later is added to the same list. */
  outputs: Output[];
  /** How it failed. */
  failed?: Failed;
  /** How the kernel ended, when it did. */
  end?: string;
}

/** What the kernel's guard tells of a cell that failed. */
export interface Failed {
  /** The statement that failed, as the kernel compiled it. */
  line?: string;
  /** Whether what the cell wrote says all that its writer needs: no line of code belongs to it. */
  plain: boolean;
}

/** Limits of a cell's run. */
export interface ExecuteOptions {
  /** A cell that takes longer is interrupted, and its kernel ended when that does not help. */
  seconds: number;
  /** Interrupts the cell in the same way. */
  signal?: AbortSignal;
}

/** Seconds that a kernel has to obey an interrupt or a shutdown before it is ended. */
const GRACE = 1;

/** A running kernel that answers. Made by startKernel. */
export class Kernel {
  /** How a cell failed last, as told by the kernel's guard. */
  failed: Failed | undefined;
  readonly #outputs = new Map<string, Output[]>();
  readonly #displays: Displays = new Map();

  constructor(
    readonly process: KernelProcess,
    readonly channels: Channels,
    /** What the kernel says of its language, for a notebook's `language_info`. */
    readonly language: Record<string, unknown>,
  ) {
    channels.output = (message, of) => {
      // A cell may go on printing when it has ended: its list stays known until the kernel's end.
      const outputs = this.#outputs.get(of);
      if (outputs) addOutput(outputs, message, this.#displays);
    };
  }

  /** Runs one cell. */
  async execute(code: string, { seconds, signal }: ExecuteOptions): Promise<Execution> {
    const outputs: Output[] = [];
    if (signal?.aborted) return { status: 'stopped', outputs };
    this.failed = undefined;
    const { id, done } = this.channels.ask('shell', 'execute_request', {
      code,
      silent: false,
      store_history: true,
      user_expressions: {},
      allow_stdin: false,
      stop_on_error: true,
    });
    this.#outputs.set(id, outputs);
    const status = done.then(async (reply): Promise<CellStatus> => {
      // What the cell left behind, such as a rejected promise, is printed before the kernel takes another request.
      await this.settle();
      if (reply.content.status === 'ok') return lostError(outputs) === undefined ? 'ok' : 'error';
      return reply.content.status === 'abort' ? 'abort' : 'error';
    });
    const ended = this.process.ended.then((): CellStatus => 'kernel ended');
    const outcome = await firstOf([status, ended], seconds, signal);
    if (outcome === 'too long' || outcome === 'stopped') {
      this.process.interrupt();
      if ((await firstOf([status, ended], GRACE)) === 'too long') this.process.kill();
    }
    const execution: Execution = { status: outcome, outputs, failed: this.failed };
    if (outcome === 'kernel ended') execution.end = await this.process.ended;
    return execution;
  }

  /** Waits until all that the kernel has sent so far is here. */
  async settle(): Promise<void> {
    await Promise.race([this.channels.ask('shell', 'kernel_info_request').done, this.process.ended]);
  }

  /** Asks the kernel to end, and ends it when it does not. */
  async shutdown(): Promise<void> {
    this.channels.ask('control', 'shutdown_request', { restart: false });
    if ((await firstOf([this.process.ended], GRACE)) === 'too long') this.process.kill();
    await this.process.ended;
  }
}

/** The first of these to settle, or `too long` after so many seconds, or `stopped` by the signal. */
async function firstOf<T>(
  promises: Promise<T>[],
  seconds: number,
  signal?: AbortSignal,
): Promise<T | 'too long' | 'stopped'> {
  let timer: NodeJS.Timeout | undefined;
  let stop: (() => void) | undefined;
  try {
    return await Promise.race([
      ...promises,
      new Promise<'too long' | 'stopped'>((resolve) => {
        timer = setTimeout(resolve, seconds * 1000, 'too long');
        stop = () => resolve('stopped');
        if (signal?.aborted) stop();
        else signal?.addEventListener('abort', stop);
      }),
    ]);
  } finally {
    clearTimeout(timer);
    if (stop) signal?.removeEventListener('abort', stop);
  }
}
