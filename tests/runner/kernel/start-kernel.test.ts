import { once } from 'node:events';
import { readFileSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { expect, onTestFinished, test, vi } from 'vitest';
import { tslabCommand } from '../../../kernel-helpers/src/runner/kernel/kernel-process.js';
import { startKernel } from '../../../kernel-helpers/src/runner/kernel/start-kernel.js';
import { runs, testFolder } from '../setting.js';

/** A program that stands in for a kernel; each start of it adds its pid to `starts`. */
function standIn(code: string) {
  const folder = testFolder();
  const log = join(folder, 'starts');
  writeFileSync(log, '');
  const script = join(folder, 'kernel.cjs');
  writeFileSync(script, `require('fs').appendFileSync(${JSON.stringify(log)}, process.pid + '\\n');\n${code}`);
  const starts = () => readFileSync(log, 'utf8').split('\n').filter(Boolean).map(Number);
  return { folder, command: (file: string) => [process.execPath, script, file], starts };
}

const deaf = 'setInterval(() => {}, 1000);';
const mark = `process.stderr.write('\\u0001kernel-guard {"event":"ports"}\\n');`;

test('a kernel that never asks for its ports is ended and tried again, three times in all', async () => {
  const { folder, command, starts } = standIn(deaf);
  await expect(startKernel({ cwd: folder, command, startupTimeout: 0.5 })).rejects.toThrow(
    /^the kernel did not start; tried 3 times, last: it did not answer within 0\.5 seconds/,
  );
  expect(starts()).toHaveLength(3);
  await vi.waitUntil(() => !starts().some(runs), 5000);
});

test('a kernel that takes its ports and then says nothing is deaf too', async () => {
  const { folder, command, starts } = standIn(mark + deaf);
  await expect(startKernel({ cwd: folder, command, startupTimeout: 0.5, attempts: 2 })).rejects.toThrow(
    /did not answer/,
  );
  expect(starts()).toHaveLength(2);
});

test('after a deaf kernel comes one that answers', async () => {
  const { folder, command, starts } = standIn(deaf);
  const kernel = await startKernel({
    cwd: folder,
    startupTimeout: 8,
    command: (file) => (starts().length === 0 ? command(file) : tslabCommand(file)),
  });
  onTestFinished(() => kernel.process.kill());
  expect(starts()).toHaveLength(1);
  expect((await kernel.execute('1', { seconds: 20 })).status).toBe('ok');
}, 60_000);

test('a kernel that breaks at once is not waited for, and its last words are told', async () => {
  const { folder, command } = standIn("console.error('no such module'); process.exit(7);");
  await expect(startKernel({ cwd: folder, command, startupTimeout: 60 })).rejects.toThrow(
    /it ended with exit code 7\nno such module/,
  );
});

test('a program that is not there is told by name', async () => {
  const command = () => [join(testFolder(), 'nothing-here')];
  await expect(startKernel({ cwd: testFolder(), command, attempts: 1 })).rejects.toThrow(
    /could not be started: .*ENOENT/,
  );
});

test('when another program snatches a port, the next kernel is started at once', async () => {
  const folder = testFolder();
  const thief = createServer().listen(0, '127.0.0.1');
  onTestFinished(() => {
    thief.close();
  });
  await once(thief, 'listening');
  const { port } = thief.address() as { port: number };
  let starts = 0;
  const kernel = await startKernel({
    cwd: folder,
    startupTimeout: 60,
    command(file) {
      // Points the first kernel at a port that someone else holds.
      if (starts++ === 0)
        writeFileSync(file, JSON.stringify({ ...JSON.parse(readFileSync(file, 'utf8')), stdin_port: port }));
      return tslabCommand(file);
    },
  });
  onTestFinished(() => kernel.process.kill());
  expect(starts).toBe(2);
}, 60_000);

test('a start that is stopped leaves no kernel', async () => {
  const { folder, command, starts } = standIn(deaf);
  const stop = new AbortController();
  const start = startKernel({ cwd: folder, command, startupTimeout: 60, signal: stop.signal });
  await vi.waitUntil(() => starts().length > 0, 5000);
  stop.abort();
  await expect(start).rejects.toThrow('stopped while the kernel was starting');
  expect(starts().some(runs)).toBe(false);
});
