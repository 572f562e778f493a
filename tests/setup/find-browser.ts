import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { homedir } from 'node:os';
import { delimiter, dirname, join } from 'node:path';
import { chromium } from 'playwright-core';

/**
 * Path of a browser for the tests: CHROMIUM_PATH, else what the system has, else one that is installed now.
 *
 * @param say  takes the lines that tell what is being installed
 * @throws Error  when there is none and none can be installed, with what to do
 */
export function findBrowser(say: (line: string) => void): string {
  const named = process.env.CHROMIUM_PATH;
  if (named) {
    if (starts(named)) return named;
    throw new Error(
      `CHROMIUM_PATH is ${named}, and there is no browser that starts; give the path of Chromium, Chrome or Edge.`,
    );
  }
  const found = usualPlaces().find(starts);
  if (found) return found;

  if (process.platform === 'linux' && process.getuid?.() === 0 && run(say, 'apt-get', ['--version'])) {
    say("Installing the system's package chromium for the browser tests (apt-get) ...");
    run(say, 'apt-get', ['update', '-q']);
    run(say, 'apt-get', ['install', '-q', '-y', '--no-install-recommends', 'chromium', 'fonts-liberation']);
    const installed = usualPlaces().find(starts);
    if (installed) return installed;
    say('That package gave no browser that starts.');
  }
  say("Downloading Playwright's Chromium for the browser tests ...");
  const playwright = join(dirname(createRequire(import.meta.url).resolve('playwright-core/package.json')), 'cli.js');
  run(say, process.execPath, [playwright, 'install', '--no-shell', 'chromium']);
  if (starts(chromium.executablePath())) return chromium.executablePath();
  throw new Error(
    'The browser tests need Chromium, Chrome or Edge, and none was found or could be installed. Install one (Debian: apt install chromium), or name its path in CHROMIUM_PATH. npm run test:core needs none.',
  );
}

function usualPlaces(): string[] {
  const own = chromium.executablePath();
  const { PATH = '', ProgramFiles = '', 'ProgramFiles(x86)': ProgramFilesX86 = '', LOCALAPPDATA = '' } = process.env;
  if (process.platform === 'win32') {
    const programs = ['Google\\Chrome', 'Chromium', 'Microsoft\\Edge'].map((name) =>
      join(name, 'Application', name.endsWith('Edge') ? 'msedge.exe' : 'chrome.exe'),
    );
    const folders = [ProgramFiles, ProgramFilesX86, LOCALAPPDATA].filter(Boolean);
    return [...programs.flatMap((program) => folders.map((folder) => join(folder, program))), own];
  }
  if (process.platform === 'darwin') {
    const programs = ['Google Chrome', 'Chromium', 'Microsoft Edge'].map((name) =>
      join('Applications', `${name}.app`, 'Contents', 'MacOS', name),
    );
    return [...programs.flatMap((program) => [join('/', program), join(homedir(), program)]), own];
  }
  const names = ['google-chrome', 'google-chrome-stable', 'chromium', 'chromium-browser', 'microsoft-edge'];
  return [...names.flatMap((name) => PATH.split(delimiter).map((folder) => join(folder, name))), own];
}

/** A file of that name may be a stub that only tells how to install the browser; on Windows asking would open a window. */
function starts(path: string): boolean {
  if (!existsSync(path)) return false;
  return process.platform === 'win32' || spawnSync(path, ['--version'], { timeout: 30_000 }).status === 0;
}

/** Runs an installer without its chatter; when it fails, its last words are said. */
function run(say: (line: string) => void, command: string, args: string[]): boolean {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const done = spawnSync(command, args, { env, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
  if (done.status !== 0 && done.stderr) say(done.stderr.trim().split('\n').slice(-3).join('\n'));
  return done.status === 0;
}
