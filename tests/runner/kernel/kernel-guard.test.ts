import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { testFolder } from '../setting.js';

const guard = join(
  import.meta.dirname,
  '..',
  '..',
  '..',
  'kernel-helpers',
  'src',
  'runner',
  'kernel',
  'kernel-guard.cjs',
);

/** A process that runs this code as a kernel would, with the guard in it. */
function guarded(code: string) {
  const script = join(testFolder(), 'kernel.cjs');
  writeFileSync(script, code);
  const child = spawn(process.execPath, ['--require', guard, script, 'kernel'], {
    detached: process.platform !== 'win32',
  });
  onTestFinished(() => {
    child.kill('SIGKILL');
  });
  return { child, end: once(child, 'exit'), said: once(child.stdout, 'data'), told: once(child.stderr, 'data') };
}

const ended = process.platform === 'win32' ? [1, null] : [null, 'SIGKILL'];

test('a kernel ends with its runner, even in the middle of a busy loop', async () => {
  const { child, end, said } = guarded("console.log('busy'); for (;;);");
  await said;
  child.stdin.end();
  expect(await end).toEqual(ended);
});

test('a kernel ends with its runner while it waits for something', async () => {
  const { child, end, said } = guarded("console.log('waiting'); setInterval(() => {}, 1000);");
  await said;
  child.stdin.destroy();
  expect(await end).toEqual(ended);
});

test('a kernel that has nothing more to do ends by itself, with its own exit code', async () => {
  expect(await guarded('').end).toEqual([0, null]);
  expect(await guarded('process.exit(3)').end).toEqual([3, null]);
});

test('a kernel takes its ports only when the runner has let go of them', async () => {
  const code = "process.on('unhandledRejection', () => {}); console.log('taken'); setInterval(() => {}, 1000);";
  const { child, said, told } = guarded(code);
  const order: string[] = [];
  void said.then(() => order.push('taken'));
  expect(String(await told)).toBe('\u0001kernel-guard {"event":"ports"}\n');
  order.push('released');
  child.stdin.write('\n');
  await said;
  expect(order).toEqual(['released', 'taken']);
});

test('a program that a sheet starts has no guard', async () => {
  const code = `if (process.argv[2] === 'kernel')
      require('child_process').fork(__filename, ['other']).on('exit', (code) => process.exit(code));
    else process.on('unhandledRejection', () => {}).exit(5);`;
  const { end, told } = guarded(code);
  expect(await Promise.race([end, told])).toEqual([5, null]);
});
