import { randomBytes } from 'node:crypto';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { type AddressInfo, createServer, type Server } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** The five ports of a kernel, as Jupyter's connection file names them. */
export const PORTS = ['shell_port', 'iopub_port', 'stdin_port', 'control_port', 'hb_port'] as const;

/** What both ends must know to speak with each other: the content of Jupyter's connection file. */
export interface ConnectionInfo extends Record<(typeof PORTS)[number], number> {
  transport: 'tcp';
  ip: '127.0.0.1';
  key: string;
  signature_scheme: 'hmac-sha256';
}

/** A connection file and its five ports, kept from everyone else until the kernel takes them. */
export interface Connection {
  info: ConnectionInfo;
  /** Path of the connection file, readable by its owner alone. */
  file: string;
  /** Lets go of all five ports at one stroke. */
  releasePorts(): void;
  /** Removes the connection file, and lets go of the ports if that has not been done. */
  close(): void;
}

/** Takes five free ports on 127.0.0.1, all held open together, and writes the connection file for them. */
export async function openConnection(): Promise<Connection> {
  const held = await Promise.all(PORTS.map(hold));
  const ports = held.map((server, i) => [PORTS[i], (server.address() as AddressInfo).port]);
  const info: ConnectionInfo = {
    ...(Object.fromEntries(ports) as Record<(typeof PORTS)[number], number>),
    transport: 'tcp',
    ip: '127.0.0.1',
    key: randomBytes(32).toString('hex'),
    signature_scheme: 'hmac-sha256',
  };
  const folder = mkdtempSync(join(tmpdir(), 'kernel-'));
  const file = join(folder, 'connection.json');
  writeFileSync(file, JSON.stringify(info), { mode: 0o600 });
  const releasePorts = () => {
    for (const server of held.splice(0)) server.close();
  };
  return {
    info,
    file,
    releasePorts,
    close() {
      releasePorts();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

function hold(): Promise<Server> {
  return new Promise((resolve, reject) => {
    // A stranger who knocks while the port is held is turned away.
    const server = createServer((socket) => socket.destroy());
    server.once('error', reject);
    server.listen({ host: '127.0.0.1', port: 0, exclusive: true }, () => resolve(server));
  });
}
