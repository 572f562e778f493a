import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';

let folder: string;
let said: string[];

function program(name: string, ...lines: string[]): string {
  const path = join(folder, name);
  writeFileSync(path, ['#!/bin/sh', ...lines].join('\n'), { mode: 0o755 });
  return path;
}

async function find(): Promise<string> {
  // Anew each time, since Playwright looks once where its own browsers are.
  vi.resetModules();
  const { findBrowser } = await import('../setup/find-browser.js');
  said = [];
  return findBrowser((line) => said.push(line));
}

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'browser-'));
  vi.stubEnv('PATH', folder);
  vi.stubEnv('CHROMIUM_PATH', '');
  vi.stubEnv('PLAYWRIGHT_BROWSERS_PATH', join(folder, 'playwright'));
  vi.stubEnv('PLAYWRIGHT_DOWNLOAD_HOST', 'http://127.0.0.1:9');
  vi.spyOn(process, 'platform', 'get').mockReturnValue('linux');
  vi.spyOn(process, 'getuid').mockReturnValue(0);
});

afterEach(() => {
  vi.unstubAllEnvs();
  vi.restoreAllMocks();
  rmSync(folder, { recursive: true });
});

test('the browser that CHROMIUM_PATH names is taken, and a wrong name is said rather than passed over', async () => {
  program('chromium');
  const named = program('my-browser');
  vi.stubEnv('CHROMIUM_PATH', named);
  expect(await find()).toBe(named);
  vi.stubEnv('CHROMIUM_PATH', join(folder, 'missing'));
  await expect(find()).rejects.toThrow('missing');
});

test("the system's own is taken, but not a stub that only tells how to install one", async () => {
  program('google-chrome', 'exit 1');
  const chromium = program('chromium');
  expect(await find()).toBe(chromium);
  expect(said).toEqual([]);
});

test('where there is none it is installed from the system, saying so', async () => {
  program(
    'apt-get',
    `case "$*" in *" chromium "*) printf '#!/bin/sh\\n' > ${folder}/chromium; /bin/chmod +x ${folder}/chromium ;; esac`,
  );
  expect(await find()).toBe(join(folder, 'chromium'));
  expect(said.join('\n')).toContain("Installing the system's package chromium");
});

test('where none can be had it says what to install', async () => {
  await expect(find()).rejects.toThrow(/Install one .* or name its path in CHROMIUM_PATH/);
  expect(said.join('\n')).toContain("Downloading Playwright's Chromium");
});
