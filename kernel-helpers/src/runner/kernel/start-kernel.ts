import { setTimeout as after } from 'node:timers/promises';
import { ShopError } from '../../measure/shop-error.js';
import { type Channels, openChannels } from './channels.js';
import { type Connection, openConnection } from './connection.js';
import { Kernel } from './kernel.js';
import { type GuardEvent, startProcess, tslabCommand } from './kernel-process.js';
import type { Message } from './message.js';

/** How a kernel is started. */
export interface KernelOptions {
  /** Folder the sheet stands in. */
  cwd: string;
  env?: Record<string, string | undefined>;
  /** The program and its arguments for a connection file; tslab unless given. */
  command?: (connectionFile: string) => string[];
  /** Seconds a kernel has to answer before another is tried. */
  startupTimeout?: number;
  /** Kernels tried, one after the other. */
  attempts?: number;
  /** Ends the attempt to start one. */
  signal?: AbortSignal;
}

/**
 * Starts a kernel and waits until it answers on all its channels. One that is deaf, as it happens when another program
 * snatches a port, is ended and another tried.
 *
 * @throws ShopError  when none answers, or the signal ends the attempt
 */
export async function startKernel(options: KernelOptions): Promise<Kernel> {
  const { attempts = 3, signal } = options;
  let reason = '';
  for (let attempt = 0; attempt < attempts; attempt++) {
    const connection = await openConnection();
    try {
      if (signal?.aborted) throw new ShopError('stopped while the kernel was starting');
      const started = await tryToStart(connection, options);
      if (started instanceof Kernel) return started;
      reason = started;
    } finally {
      connection.close();
    }
  }
  throw new ShopError(`the kernel did not start; tried ${attempts} times, last: ${reason}`);
}

/** A kernel that answers, or why there is none. */
async function tryToStart(connection: Connection, options: KernelOptions): Promise<Kernel | string> {
  const { command = tslabCommand, startupTimeout = 10, signal } = options;
  let kernel: Kernel | undefined;
  let wantPorts = () => {};
  const portsWanted = new Promise<void>((resolve) => {
    wantPorts = resolve;
  });
  const onEvent = (event: GuardEvent) => {
    if (event.event === 'ports') wantPorts();
    if (event.event === 'failed' && kernel) kernel.failed = event;
  };
  const started = startProcess(command(connection.file), { ...options, onEvent });
  signal?.addEventListener('abort', started.kill);

  const decided = new AbortController();
  const answer = async () => {
    await portsWanted;
    connection.releasePorts();
    started.portsFree();
    const channels = openChannels(connection.info);
    void started.ended.then(() => channels.close());
    const [info] = await Promise.all([
      untilAnswered(channels, 'shell', decided.signal),
      untilAnswered(channels, 'control', decided.signal),
      channels.heartbeat(),
    ]);
    return new Kernel(started, channels, info?.content.language_info as Record<string, unknown>);
  };
  const deaf = after(startupTimeout * 1000, `it did not answer within ${startupTimeout} seconds`, {
    signal: decided.signal,
  });
  try {
    const first = await Promise.race([answer(), started.ended, deaf]);
    if (typeof first !== 'string') kernel = first;
    return first;
  } finally {
    decided.abort();
    signal?.removeEventListener('abort', started.kill);
    if (!kernel) started.kill();
  }
}

/**
 * Asks until the reply and the kernel's state have both arrived: what it publishes before the subscription has reached
 * it is lost.
 */
async function untilAnswered(
  channels: Channels,
  channel: 'shell' | 'control',
  decided: AbortSignal,
): Promise<Message | undefined> {
  while (!decided.aborted) {
    const reply = await Promise.race([channels.ask(channel, 'kernel_info_request').done, after(50)]);
    if (reply) return reply;
  }
}
