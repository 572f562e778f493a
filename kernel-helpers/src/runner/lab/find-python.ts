import { spawnSync } from 'node:child_process';
import { ShopError } from '../../measure/shop-error.js';

/** A Python that can make environments. */
export interface Python {
  /** Path of its interpreter. */
  path: string;
  version: string;
}

/** What a maker without Python is told besides. */
export const pythonNotNeeded = 'npm run work needs neither Python nor JupyterLab.';

// The range that the pinned packages come ready made for.
const oldest = 9;
const newest = 14;

/**
 * The first Python 3.9 to 3.14 on this computer that can make environments: the one named in the variable PYTHON,
 * else the system's usual names.
 *
 * @throws ShopError  says which Pythons were found, why they do not do, and what to install
 */
export function findPython(): Python {
  const unfit: string[] = [];
  for (const command of candidates()) {
    const found = ask(command);
    if (!found) continue;
    const { path, version, minor, venv } = found;
    if (minor < oldest || minor > newest) unfit.push(`${command.join(' ')} is Python ${version}`);
    else if (!venv) unfit.push(`${command.join(' ')} (Python ${version}) lacks its venv module`);
    else return { path, version };
  }
  const why = unfit.length > 0 ? `: ${unfit.join('; ')}` : '';
  throw new ShopError(
    `JupyterLab needs Python 3.${oldest} to 3.${newest} with its venv module, and there is none${why}. Install it from python.org or with your system's packages (Debian and Ubuntu: apt install python3-venv), or name its path in the variable PYTHON. ${pythonNotNeeded}`,
  );
}

function candidates(): string[][] {
  const minors = Array.from({ length: newest - oldest + 1 }, (_, i) => newest - i);
  const named = process.env.PYTHON ? [[process.env.PYTHON]] : [];
  if (process.platform === 'win32') {
    return [...named, ['py', '-3'], ['python'], ...minors.map((minor) => ['py', `-3.${minor}`])];
  }
  return [...named, ['python3'], ['python'], ...minors.map((minor) => [`python3.${minor}`])];
}

function ask([command = '', ...args]: string[]) {
  // Debian's Python has venv without ensurepip until python3-venv is installed.
  const script = `import sys, importlib.util as find
print(sys.executable)
print(*sys.version_info[:3], *(name for name in ("venv", "ensurepip") if find.find_spec(name)))`;
  const answer = spawnSync(command, [...args, '-c', script], { encoding: 'utf8', timeout: 20_000 });
  const [path = '', facts = ''] = answer.status === 0 ? answer.stdout.split(/\r?\n/) : [];
  const [major, minor, patch, ...modules] = facts.split(' ');
  if (major !== '3') return undefined;
  return { path, version: `3.${minor}.${patch}`, minor: Number(minor), venv: modules.length === 2 };
}
