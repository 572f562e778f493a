import { spawn, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { readFileSync, rmSync } from 'node:fs';
import { delimiter, dirname, join } from 'node:path';
import { createInterface } from 'node:readline';
import { replaceFile } from '../../disk/replace-file.js';
import { ShopError } from '../../measure/shop-error.js';
import { findPython, pythonNotNeeded } from './find-python.js';

/** The project's own Python with JupyterLab, nbclient, nbconvert and nbformat, each in the version pinned for it. */
export interface PythonEnvironment {
  /** Path of its interpreter. */
  python: string;
  /** Environment variables to run it with, so that it finds our kernel and leaves the user's own Jupyter alone. */
  variables: NodeJS.ProcessEnv;
}

/**
 * The project's Python environment, made in `.venv` when it is missing, broken, half made or out of date.
 *
 * @param root  the project's folder
 * @param say  takes the lines that tell what is being done; none when the environment is there already
 * @throws ShopError  when there is no fitting Python or the packages cannot be had, with what to do
 */
export async function pythonEnvironment(root: string, say: (line: string) => void): Promise<PythonEnvironment> {
  const folder = join(root, '.venv');
  const requirements = join(root, 'kernel-helpers', 'jupyter', 'requirements.txt');
  const python = process.platform === 'win32' ? join(folder, 'Scripts', 'python.exe') : join(folder, 'bin', 'python');
  const environment = { python, variables: jupyterVariables(root) };
  // Written last and removed first, so that an environment with this file in it was finished.
  const mark = join(folder, 'finished');
  const pinned = readFileSync(requirements);
  const wanted = createHash('sha256').update(pinned).digest('hex');
  if (readIfThere(mark) === wanted && works(environment)) return environment;

  const base = findPython();
  say(`Making a Python environment for JupyterLab in .venv, with Python ${base.version}: once, about half a minute.`);
  try {
    rmSync(mark, { force: true });
    rmSync(folder, { recursive: true, force: true, maxRetries: 3 });
  } catch (error) {
    throw new ShopError(
      `The old .venv cannot be removed (${(error as Error).message}); stop JupyterLab and try again.`,
    );
  }
  const venv = spawnSync(base.path, ['-m', 'venv', folder], { encoding: 'utf8', env: environment.variables });
  if (venv.status !== 0) {
    throw new ShopError(
      `Python ${base.version} could not make an environment: ${lastLine(venv.stderr || venv.stdout)}`,
    );
  }
  await install(environment, requirements, say);
  if (!works(environment)) {
    throw new ShopError('The packages for JupyterLab were installed and do not load; remove .venv and try again.');
  }
  replaceFile(mark, wanted);
  say('The Python environment is ready.');
  return environment;
}

/** Jupyter's settings, data and running files stay in `.jupyter`; what the user set for another Python or Jupyter is left out. */
function jupyterVariables(root: string): NodeJS.ProcessEnv {
  const foreign = /^(JUPYTER|IPYTHON|PYTHON(HOME|PATH|STARTUP)$|PIP_(USER|TARGET|PREFIX)$)/i;
  const kept = Object.entries(process.env).filter(([name]) => !foreign.test(name));
  const path = kept.find(([name]) => name.toUpperCase() === 'PATH') ?? ['PATH', ''];
  const own = join(root, '.jupyter');
  return {
    ...Object.fromEntries(kept),
    // The kernel runs on the very Node that this command runs on.
    [path[0]]: [dirname(process.execPath), path[1]].join(delimiter),
    JUPYTER_PATH: join(root, 'kernel-helpers', 'jupyter'),
    JUPYTER_CONFIG_PATH: join(root, 'kernel-helpers', 'jupyter'),
    JUPYTER_CONFIG_DIR: join(own, 'config'),
    JUPYTER_DATA_DIR: join(own, 'data'),
    JUPYTER_RUNTIME_DIR: join(own, 'runtime'),
    IPYTHONDIR: join(own, 'ipython'),
    PYTHONNOUSERSITE: '1',
    PIP_USER: '0',
    PIP_DISABLE_PIP_VERSION_CHECK: '1',
  };
}

function works({ python, variables }: PythonEnvironment): boolean {
  const imports = 'import jupyterlab.labapp, nbclient, nbconvert, nbformat';
  return spawnSync(python, ['-c', imports], { env: variables, stdio: 'ignore' }).status === 0;
}

/** Every package is pinned, so nothing is looked up beyond the list; ready-made ones only, so no compiler is needed. */
async function install(environment: PythonEnvironment, requirements: string, say: (line: string) => void) {
  const args = ['-m', 'pip', 'install', '--no-deps', '--only-binary', ':all:', '--no-input', '--retries', '2'];
  const pip = spawn(environment.python, [...args, '--progress-bar', 'off', '-r', requirements], {
    env: environment.variables,
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let fetched = 0;
  let trouble = '';
  createInterface({ input: pip.stdout }).on('line', (line) => {
    if (line.startsWith('Collecting ') && ++fetched % 20 === 0) say(`  ${fetched} packages fetched`);
    if (line.startsWith('Installing collected')) say(`  all ${fetched} packages fetched, unpacking them`);
  });
  pip.stderr.setEncoding('utf8').on('data', (text: string) => {
    trouble += text;
  });
  const status = await new Promise<number | null>((resolve, reject) => pip.on('error', reject).on('close', resolve));
  if (status === 0) return;
  if (/connection|timed? ?out|name resolution|proxy|SSLError/i.test(trouble)) {
    throw new ShopError(
      `The Python package index cannot be reached, and JupyterLab comes from there: connect this computer and try again, or name another index in PIP_INDEX_URL. ${pythonNotNeeded}`,
    );
  }
  throw new ShopError(`JupyterLab could not be installed: ${lastLine(trouble)}. ${pythonNotNeeded}`);
}

function readIfThere(file: string): string | undefined {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    return undefined;
  }
}

function lastLine(text: string): string {
  return text.trim().split('\n').at(-1) ?? '';
}
