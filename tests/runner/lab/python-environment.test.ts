import { existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { findPython } from '../../../kernel-helpers/src/runner/lab/find-python.js';
import { pythonEnvironment } from '../../../kernel-helpers/src/runner/lab/python-environment.js';

let root: string;
let said: string[];

/** A stand-in for a Python: answers for its version, makes environments that are itself again, and installs nothing. */
function pretendPython(name: string, version: string): void {
  const script = `#!/bin/sh
case "$*" in
  *version_info*) echo "$0"; echo "${version}" ;;
  "-m venv"*) /bin/mkdir -p "$3/bin"; /bin/cp "$0" "$3/bin/python" ;;
  "-m pip"*) if [ -n "$PRETEND_TROUBLE" ]; then echo "$PRETEND_TROUBLE" >&2; exit 1; fi ;;
esac
`;
  writeFileSync(join(root, 'path', name), script, { mode: 0o755 });
}

function requirements(text: string): void {
  writeFileSync(join(root, 'kernel-helpers', 'jupyter', 'requirements.txt'), text);
}

async function make() {
  said = [];
  return pythonEnvironment(root, (line) => said.push(line));
}

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'environment-'));
  mkdirSync(join(root, 'path'));
  mkdirSync(join(root, 'kernel-helpers', 'jupyter'), { recursive: true });
  requirements('jupyterlab==4.5.11\n');
  vi.stubEnv('PATH', join(root, 'path'));
  vi.stubEnv('PYTHON', '');
});

afterEach(() => {
  vi.unstubAllEnvs();
  rmSync(root, { recursive: true });
});

describe('the Python that is taken', () => {
  test('is the first that is new enough and can make environments', () => {
    pretendPython('python3', '3 8 18 venv ensurepip');
    pretendPython('python3.13', '3 13 0 venv');
    pretendPython('python3.11', '3 11 2 venv ensurepip');
    expect(findPython()).toEqual({ path: join(root, 'path', 'python3.11'), version: '3.11.2' });
  });

  test('is the one that PYTHON names, before any other', () => {
    pretendPython('python3', '3 11 2 venv ensurepip');
    pretendPython('mine', '3 12 1 venv ensurepip');
    vi.stubEnv('PYTHON', join(root, 'path', 'mine'));
    expect(findPython().version).toBe('3.12.1');
  });

  test.each([
    ['there is none', '', 'there is none. Install it from python.org'],
    ['it is too old', '3 8 18 venv ensurepip', 'python3 is Python 3.8.18'],
    ['its packages are not ready yet', '3 15 0 venv ensurepip', 'python3 is Python 3.15.0'],
    ['it makes no environments', '3 11 2 venv', 'python3 (Python 3.11.2) lacks its venv module'],
  ])('when %s, the message says so and what can be done without', (_, version, words) => {
    if (version) pretendPython('python3', version);
    expect(findPython).toThrow(words);
    expect(findPython).toThrow('npm run work needs neither Python nor JupyterLab');
  });
});

describe('the environment', () => {
  beforeEach(() => pretendPython('python3', '3 11 2 venv ensurepip'));

  test('is made on first use, saying so, and then used again without a word', async () => {
    const { python } = await make();
    expect(existsSync(python)).toBe(true);
    expect(said[0]).toContain('Making a Python environment');
    await make();
    expect(said).toEqual([]);
  });

  test.each([
    ['its packages are other ones now', () => requirements('jupyterlab==4.5.12\n')],
    ['it was left half made', () => rmSync(join(root, '.venv', 'finished'))],
    ['its interpreter is gone', () => rmSync(join(root, '.venv', 'bin', 'python'))],
  ])('is made anew when %s', async (_, happens) => {
    await make();
    writeFileSync(join(root, '.venv', 'left-over'), '');
    happens();
    await make();
    expect(said[0]).toContain('Making a Python environment');
    expect(existsSync(join(root, '.venv', 'left-over'))).toBe(false);
  });

  test.each([
    ['NewConnectionError: Failed to establish a new connection', 'The Python package index cannot be reached'],
    ['ERROR: No matching distribution found for jupyterlab==4.5.11', 'No matching distribution found'],
  ])('that cannot be had says why, and the next try starts afresh', async (trouble, words) => {
    vi.stubEnv('PRETEND_TROUBLE', trouble);
    await expect(make()).rejects.toThrow(words);
    await expect(make()).rejects.toThrow('npm run work needs neither Python nor JupyterLab');
    vi.stubEnv('PRETEND_TROUBLE', '');
    await make();
    expect(said.at(-1)).toBe('The Python environment is ready.');
  });

  test("keeps to the project's own Jupyter folders, whatever the maker has set", async () => {
    vi.stubEnv('JUPYTER_CONFIG_DIR', '/home/maker/.jupyter');
    vi.stubEnv('JUPYTERLAB_SETTINGS_DIR', '/home/maker/lab');
    vi.stubEnv('PYTHONPATH', '/home/maker/python');
    const { variables } = await make();
    expect(variables.JUPYTER_PATH).toBe(join(root, 'kernel-helpers', 'jupyter'));
    expect(variables.JUPYTER_CONFIG_DIR).toBe(join(root, '.jupyter', 'config'));
    expect(Object.values(variables).filter((value) => value?.startsWith('/home/maker/'))).toEqual([]);
  });
});
