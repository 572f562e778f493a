import { existsSync, readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:net';
import { expect, onTestFinished, test } from 'vitest';
import { openConnection, PORTS } from '../../../kernel-helpers/src/runner/kernel/connection.js';

async function opened() {
  const connection = await openConnection();
  onTestFinished(() => connection.close());
  return connection;
}

function canBind(port: number): Promise<boolean> {
  return new Promise((resolve) => {
    const server = createServer();
    server.once('error', () => resolve(false));
    server.listen(port, '127.0.0.1', () => server.close(() => resolve(true)));
  });
}

test('nobody else can take any of the five ports until they are released, all together', async () => {
  const { info, releasePorts } = await opened();
  const ports = PORTS.map((name) => info[name]);
  expect(new Set(ports).size).toBe(5);
  expect(await Promise.all(ports.map(canBind))).toEqual([false, false, false, false, false]);
  releasePorts();
  expect(await Promise.all(ports.map(canBind))).toEqual([true, true, true, true, true]);
});

test('many connections at once never share a port or a key', async () => {
  const all = await Promise.all(Array.from({ length: 12 }, opened));
  expect(new Set(all.flatMap(({ info }) => PORTS.map((name) => info[name]))).size).toBe(60);
  expect(new Set(all.map(({ info }) => info.key)).size).toBe(12);
});

test('the connection file says all of it, to its owner alone, and is gone after closing', async () => {
  const { info, file, close } = await opened();
  expect(JSON.parse(readFileSync(file, 'utf8'))).toEqual(info);
  expect(info).toMatchObject({ ip: '127.0.0.1', transport: 'tcp', signature_scheme: 'hmac-sha256' });
  if (process.platform !== 'win32') expect(statSync(file).mode & 0o777).toBe(0o600);
  close();
  expect(existsSync(file)).toBe(false);
  expect(await canBind(info.shell_port)).toBe(true);
});
