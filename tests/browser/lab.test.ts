import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { expect, inject, test } from 'vitest';
import { startLab } from './start-lab.js';

test('a lab that is killed outright takes JupyterLab and its kernels with it', async () => {
  const lab = await startLab();
  const started = await lab.request('POST', '/api/kernels', { name: 'tslab' });
  const { id } = (await started.json()) as { id: string };
  const connection = join(inject('python').variables.JUPYTER_RUNTIME_DIR as string, `kernel-${id}.json`);
  expect(existsSync(connection)).toBe(true);

  lab.kill();
  const answers = () =>
    lab.request('GET', '/api/status').then(
      () => true,
      () => false,
    );
  await expect.poll(answers, { timeout: 30_000 }).toBe(false);
  // Jupyter removes a kernel's connection file once the kernel has ended.
  await expect.poll(() => existsSync(connection), { timeout: 30_000 }).toBe(false);
});

test('only who has the token gets in, and only on this computer', async () => {
  const lab = await startLab();
  try {
    const address = new URL(lab.addressOf('worksheets'));
    expect(address.hostname).toBe('127.0.0.1');
    expect((await fetch(`${address.origin}/api/contents`)).status).toBe(403);
    expect((await lab.request('GET', '/api/contents/data')).status).toBe(200);
  } finally {
    await lab.stop();
  }
});
