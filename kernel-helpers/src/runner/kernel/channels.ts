import { randomUUID } from 'node:crypto';
import { Dealer, Request, Subscriber } from 'zeromq';
import type { ConnectionInfo } from './connection.js';
import { decode, encode, type Message, request } from './message.js';

/** A request that was sent. */
export interface Asked {
  id: string;
  /** Settles with the reply once the kernel has also said that it is idle again: by then it has sent all its outputs. */
  done: Promise<Message>;
}

/** The open channels to one kernel. Messages whose signature is not the kernel's are dropped. */
export interface Channels {
  /** Gets every message the kernel publishes, but for its state, and the id of the request it belongs to. */
  output: (message: Message, of: string) => void;
  ask(channel: 'shell' | 'control', type: string, content?: Record<string, unknown>): Asked;
  /** Settles when the kernel's heartbeat answers. */
  heartbeat(): Promise<void>;
  close(): void;
}

// A kernel binds its ports a few hundredths of a second after they are free: knock often.
const OPTIONS = { linger: 0, reconnectInterval: 10 };

/**
 * Connects to a kernel's shell, control, iopub and heartbeat ports. The stdin channel stays closed: every request says
 * `allow_stdin: false`, so that no kernel asks for input.
 */
export function openChannels(info: ConnectionInfo): Channels {
  const session = randomUUID();
  const shell = new Dealer(OPTIONS);
  const control = new Dealer(OPTIONS);
  // No limit: a sheet may print faster than we read, and what exceeds a limit would be lost.
  const iopub = new Subscriber({ ...OPTIONS, receiveHighWaterMark: 0 });
  const heart = new Request(OPTIONS);
  const at = (port: number) => `${info.transport}://${info.ip}:${port}`;
  shell.connect(at(info.shell_port));
  control.connect(at(info.control_port));
  iopub.connect(at(info.iopub_port));
  iopub.subscribe();
  heart.connect(at(info.hb_port));

  const waiting = new Map<string, { reply?: Message; idle?: boolean; done: (reply: Message) => void }>();
  for (const socket of [shell, control, iopub]) void listen(socket);

  async function listen(socket: AsyncIterable<Buffer[]>) {
    for await (const frames of socket) {
      const message = decode(frames, info.key);
      if (message) take(message, message.parent.msg_id ?? '');
    }
  }

  function take(message: Message, of: string) {
    const asked = waiting.get(of);
    const type = message.header.msg_type;
    if (type === 'status') {
      if (asked && message.content.execution_state === 'idle') asked.idle = true;
    } else if (type.endsWith('_reply')) {
      if (asked) asked.reply = message;
    } else channels.output(message, of);
    if (asked?.reply && asked.idle) {
      waiting.delete(of);
      asked.done(asked.reply);
    }
  }

  const channels: Channels = {
    output: () => undefined,
    ask(channel, type, content = {}) {
      const message = request(type, content, session);
      const id = message.header.msg_id;
      const done = new Promise<Message>((resolve) => waiting.set(id, { done: resolve }));
      const socket = channel === 'shell' ? shell : control;
      // A closed socket sends nothing; whoever waits for the reply sees that the kernel has ended.
      if (!socket.closed) void socket.send(encode(message, info.key));
      return { id, done };
    },
    async heartbeat() {
      await heart.send('beat');
      await heart.receive();
    },
    close() {
      for (const socket of [shell, control, iopub, heart]) socket.close();
    },
  };
  return channels;
}
