import { mkdirSync, rmSync, statSync, utimesSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, onTestFinished, test } from 'vitest';
import type { Kernel } from '../../../kernel-helpers/src/runner/kernel/kernel.js';
import { errorText, type Output } from '../../../kernel-helpers/src/runner/kernel/outputs.js';
import { startKernel } from '../../../kernel-helpers/src/runner/kernel/start-kernel.js';
import { runs } from '../setting.js';

const cwd = import.meta.dirname;
const start = () => startKernel({ cwd, startupTimeout: 60 });
const limit = { seconds: 60 };

describe('a kernel that goes on', () => {
  let kernel: Kernel;
  beforeAll(async () => {
    kernel = await start();
  }, 60_000);
  afterAll(() => kernel.process.kill());

  /** For a moment after an error the kernel refuses everything, and says so with a status of its own. */
  const untilWilling = () =>
    expect.poll(async () => (await kernel.execute('1', limit)).status, { timeout: 20_000 }).toBe('ok');

  test('it says what its language is', () => {
    expect(kernel.language).toMatchObject({ name: 'typescript', file_extension: '.ts' });
  });

  test('what one cell declares the next can use, and shows as it should', async () => {
    await kernel.execute("const wood = 'Kirschbaum – вишня 🍒';", limit);
    const { status, outputs } = await kernel.execute(
      "import { display } from 'tslab';\ndisplay.html('<b>' + wood + '</b>');\nwood.length",
      limit,
    );
    expect(status).toBe('ok');
    expect(outputs).toEqual([
      { output_type: 'display_data', data: { 'text/html': '<b>Kirschbaum – вишня 🍒</b>' }, metadata: {} },
      { output_type: 'stream', name: 'stdout', text: '21\n' },
    ]);
  });

  test('a name of an earlier cell can be a shorthand property, and a property of its name can be taken under another', async () => {
    const { status } = await kernel.execute(
      "import { basename } from 'node:path';\nconst box = { width: 5 };\nconst width = 7;\nlet label = 'none';",
      limit,
    );
    expect(status).toBe('ok');
    const { outputs } = await kernel.execute(
      [
        'const { width: w } = box;',
        'const { basename: named } = { basename: 3 };',
        "console.log(JSON.stringify([{ box, w, width }, named, ((box: number) => ({ box }))(9), { basename }.basename('a/b')]));",
        "({ label } = { label: 'lid' });",
        'console.log(label);',
      ].join('\n'),
      limit,
    );
    expect(outputs).toEqual([
      { output_type: 'stream', name: 'stdout', text: '[{"box":{"width":5},"w":5,"width":7},3,{"box":9},"b"]\nlid\n' },
    ]);
  });

  test('packages that come, go or are touched while a sheet is open leave its next cell as it was', async () => {
    const packages = join(cwd, 'node_modules');
    const library = createRequire(import.meta.url).resolve('@tslab/typescript-for-tslab/lib/lib.es2022.d.ts');
    const { atime, mtime } = statSync(library);
    onTestFinished(() => rmSync(packages, { recursive: true, force: true }));
    await kernel.execute("import { parseLength } from 'kernel-helpers';", limit);
    for (const change of [
      () => mkdirSync(join(packages, 'planes'), { recursive: true }),
      () => rmSync(packages, { recursive: true }),
      () => utimesSync(library, atime, mtime),
    ]) {
      change();
      // A cell that waits gives the kernel time to hear of it.
      await kernel.execute('await new Promise((heard) => setTimeout(heard, 100))', limit);
      expect((await kernel.execute("[parseLength('1 in')].map(String)", limit)).outputs).toMatchObject([
        { text: "[ '1' ]\n" },
      ]);
    }
  });

  test('a cell knows the standard library and what it imports, and of @types packages Node alone', async () => {
    const known =
      "const sizes = new Map([['lid', 5]]);\n[...sizes.values()].flat().at(-1)?.toFixed(1).padStart(4).replaceAll(' ', '_')";
    expect((await kernel.execute(known, limit)).outputs).toMatchObject([{ text: '_5.0\n' }]);
    const { status, outputs } = await kernel.execute('let claim: Chai.Assertion;', limit);
    expect([status, errorText(outputs)]).toEqual(['error', expect.stringContaining("Cannot find namespace 'Chai'")]);
    await untilWilling();
  });

  test('twenty thousand lines of output all arrive, in order', async () => {
    const { status, outputs } = await kernel.execute('for (let i = 0; i < 20000; i++) console.log(i);', limit);
    expect(status).toBe('ok');
    expect(outputs).toHaveLength(1);
    const text = outputs[0]?.output_type === 'stream' ? outputs[0].text : '';
    expect(text).toBe(Array.from({ length: 20_000 }, (_, i) => `${i}\n`).join(''));
  });

  test('what a cell prints when it has ended is still its own', async () => {
    const first = await kernel.execute("setTimeout(() => console.log('late'), 100); console.log('early');", limit);
    expect(first.status).toBe('ok');
    // The next cell stays silent until the first has spoken.
    await kernel.execute('await new Promise((resolve) => setTimeout(resolve, 200));', limit);
    expect(first.outputs.map((output) => output.output_type === 'stream' && output.text).join('')).toMatch(/^early\n/);
  });

  test.each([
    ['at once', 'explodedView(null as never);'],
    ['after waiting', 'await null; explodedView(null as never);'],
    [
      'unheard',
      'Promise.resolve().then(() => explodedView(null as never)); await new Promise((go) => setTimeout(go, 99));',
    ],
    ['with much to say', "throw new Error('no room '.repeat(400) + 'of null');"],
  ])('an error within the helpers (%s) is told without their source, in lines that can be read', async (_, code) => {
    const { outputs } = await kernel.execute(`import { explodedView } from 'kernel-helpers';\n${code}`, limit);
    const said = errorText(outputs).replace(/^UnhandledPromiseRejection: /, '');
    expect(said).toMatch(
      code.includes('no room') ? /^Error: no room .* \.\.\.\n/ : /^TypeError: .* null .*\n +at .*\bexplodedView /,
    );
    for (const line of said.split('\n').slice(1)) expect(line).toMatch(/^ +at /);
    expect(Math.max(...said.split('\n').map(({ length }) => length))).toBeLessThan(400);
    await untilWilling();
  });

  test.each([
    ['an error', "throw new Error('the board is too short');", /Error: the board is too short/],
    ['one of our errors', "import { parseLength } from 'kernel-helpers';\nparseLength('abc');", /abc/],
    ['a wrong type', "const width: number = '9 in';", /^1:7 - Type 'string' is not assignable to type 'number'/],
    ['a slip of the pen', 'const = 3;', /^1:7 - Variable declaration expected/],
    ['a promise that is rejected', "await Promise.reject(new Error('no glue'));", /Error: no glue/],
    ['a rejected promise that nobody waits for', "Promise.reject(new Error('no glue')); 1", /Error: no glue/],
    ['a rejection without an error', 'await Promise.reject(undefined);', /^undefined/],
  ])('%s is no success', async (_, code, message) => {
    const { status, outputs } = await kernel.execute(code, limit);
    expect(status).toBe('error');
    expect(errorText(outputs)).toMatch(message);
    await untilWilling();
  });

  test('a cell that the kernel refused to run is no success', async () => {
    await kernel.execute("throw new Error('first')", limit);
    const { status, outputs } = await kernel.execute("console.log('never ran')", limit);
    expect({ status, outputs }).toEqual({ status: 'abort', outputs: [] });
    await untilWilling();
  });

  test('the statement that failed is known, but for an error of ours, which says all in one line', async () => {
    const code = `import { parseLength } from 'kernel-helpers';\n\nconst wide: number = parseLength('nine');`;
    const ours = await kernel.execute(code, limit);
    expect(errorText(ours.outputs).split('\n')).toHaveLength(1);
    expect(ours.failed).toEqual({ event: 'failed', plain: true });
    await untilWilling();
    const other = await kernel.execute(code.replace("parseLength('nine')", 'new Array(-1).length'), limit);
    expect(other.failed).toMatchObject({ line: expect.stringContaining('new Array(-1)'), plain: false });
    await untilWilling();
  });

  test('what a helper refuses has the name that it has among the parameters of the sheet', async () => {
    const sheet =
      "import { roughCut } from 'kernel-helpers';\nconst parameters = { lengthAllowance: '9 ft', sawn: '1/8 in' };";
    expect((await kernel.execute(sheet, limit)).status).toBe('ok');
    const used = `const { lengthAllowance: length, sawn: kerf } = parameters;
const cut: unknown = (roughCut as any)({ parts: [], allowances: { length }, kerf });`;
    expect(errorText((await kernel.execute(used, limit)).outputs)).toMatch(
      /^lengthAllowance: "9 ft" given; possible: /,
    );
    await untilWilling();
  });

  test('a cell that waits too long is interrupted, and the kernel lives on', async () => {
    const { status } = await kernel.execute('await new Promise(() => {});', { seconds: 1.5 });
    expect(status).toBe('too long');
    if (process.platform === 'win32') return;
    await untilWilling();
  });

  test.skipIf(process.platform === 'win32')(
    'a busy loop is interrupted, by the time limit or by the maker',
    async () => {
      expect((await kernel.execute('for (;;);', { seconds: 1.5 })).status).toBe('too long');
      await untilWilling();
      const stop = new AbortController();
      const busy = kernel.execute('for (;;);', { ...limit, signal: stop.signal });
      stop.abort();
      expect((await busy).status).toBe('stopped');
    },
  );
});

/** The program whose pid the cell printed is gone; Windows has no process groups. */
async function expectEnded(outputs: Output[]) {
  const pid = outputs[0]?.output_type === 'stream' ? Number(outputs[0].text) : 0;
  expect(pid).toBeGreaterThan(0);
  if (process.platform !== 'win32') await expect.poll(() => runs(pid), { timeout: 5000 }).toBe(false);
}

describe('a kernel that ends', () => {
  test('asked to shut down it goes, and nothing of it stays', async () => {
    const kernel = await start();
    await kernel.shutdown();
    expect(runs(kernel.process.pid)).toBe(false);
  }, 60_000);

  test('in the middle of a cell, the cell says how', async () => {
    const kernel = await start();
    const { status, end } = await kernel.execute("import process from 'node:process';\nprocess.exit(9)", limit);
    expect(status).toBe('kernel ended');
    expect(end).toMatch(/^it ended with exit code 9/);
    expect((await kernel.execute('1', limit)).status).toBe('kernel ended');
    await kernel.shutdown();
  }, 60_000);

  test('of an error that nobody caught, its last words are that error and not the source of the helpers', async () => {
    const kernel = await start();
    const code = `import { explodedView } from 'kernel-helpers';
      import process from 'node:process';
      process.removeAllListeners('uncaughtException');
      setTimeout(() => explodedView(null as never)); await new Promise(() => {});`;
    const { end } = await kernel.execute(code, limit);
    expect(end).toMatch(/^it ended with exit code 1\nTypeError: .* null .*\n +at explodedView /);
    expect(
      Math.max(
        ...String(end)
          .split('\n')
          .map(({ length }) => length),
      ),
    ).toBeLessThan(400);
  }, 60_000);

  test('by itself, what the sheet had started ends with it', async () => {
    const kernel = await start();
    const code = `import { spawn } from 'node:child_process';
      import process from 'node:process';
      const child = spawn(process.execPath, ['-e', 'setInterval(() => {}, 1000)']);
      console.log(child.pid); setTimeout(() => process.exit(), 300); await new Promise(() => {});`;
    const { status, outputs } = await kernel.execute(code, limit);
    expect(status).toBe('kernel ended');
    await expectEnded(outputs);
  }, 60_000);

  test('deaf to interrupts, it is ended, with all that it started', async () => {
    const kernel = await start();
    // The handlers that a cell sets before its first await are taken back when it comes to that.
    const code = `import { spawn } from 'node:child_process';
      import process from 'node:process';
      const child = spawn(process.execPath, ['-e', 'setInterval(() => {}, 1000)']);
      console.log(child.pid);
      await null;
      process.removeAllListeners('SIGINT').on('SIGINT', () => {});
      await new Promise(() => {});`;
    const { status, outputs } = await kernel.execute(code, { seconds: 4 });
    expect(status).toBe('too long');
    await kernel.process.ended;
    await expectEnded(outputs);
  }, 60_000);
});
