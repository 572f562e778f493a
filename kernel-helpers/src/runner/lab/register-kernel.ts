import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { homedir } from 'node:os';
import { join, normalize } from 'node:path';
import { replaceFile } from '../../disk/replace-file.js';
import { ShopError } from '../../measure/shop-error.js';

/** What in a kernel.json tells that this project put it there. */
const owner = 'commission-daybook';

interface KernelSpec {
  argv: string[];
  metadata?: Record<string, unknown>;
}

/**
 * Where Jupyter, and so VS Code, looks for this user's own kernels.
 *
 * @see Jupyter documentation, "Common Directories and File Locations"
 */
export function userKernelFolder(): string {
  const { JUPYTER_DATA_DIR, APPDATA, XDG_DATA_HOME } = process.env;
  const data =
    JUPYTER_DATA_DIR ||
    {
      win32: join(APPDATA || join(homedir(), 'AppData', 'Roaming'), 'jupyter'),
      darwin: join(homedir(), 'Library', 'Jupyter'),
    }[process.platform as string] ||
    join(XDG_DATA_HOME || join(homedir(), '.local', 'share'), 'jupyter');
  return join(data, 'kernels', 'tslab');
}

/**
 * Lets VS Code and any other Jupyter of this user find the sheets' kernel, by a kernel.json with whole paths.
 *
 * @param root  the project's folder
 * @param folder  where it goes
 * @param say  takes the line that tells where, before anything is written
 * @throws ShopError  when a kernel of that name is there that this project did not put there
 */
export function registerKernel(root: string, folder: string, say: (line: string) => void): void {
  if (existsSync(folder) && !isOurs(folder)) {
    throw new ShopError(
      `${folder} holds a kernel named tslab that this project did not put there, and it stays as it is; the sheets run on it too, or remove it and run this again.`,
    );
  }
  say(`Writing ${join(folder, 'kernel.json')}, so that VS Code finds the kernel; --unregister takes it away again.`);
  const source = join(root, 'kernel-helpers', 'jupyter', 'kernels', 'tslab');
  const spec: KernelSpec = JSON.parse(readFileSync(join(source, 'kernel.json'), 'utf8'));
  const argv = spec.argv.map((part) =>
    part.startsWith('{resource_dir}') ? normalize(part.replace('{resource_dir}', source)) : part,
  );
  const metadata = { ...spec.metadata, [owner]: root };
  mkdirSync(folder, { recursive: true });
  const whole = { ...spec, argv: [process.execPath, ...argv.slice(1)], metadata };
  replaceFile(join(folder, 'kernel.json'), `${JSON.stringify(whole, null, 2)}\n`);
}

/** Takes away what `registerKernel` wrote, and nothing else. */
export function unregisterKernel(folder: string, say: (line: string) => void): void {
  if (!isOurs(folder)) {
    say(`There is nothing of this project in ${folder}.`);
    return;
  }
  rmSync(folder, { recursive: true });
  say(`Removed ${folder}.`);
}

function isOurs(folder: string): boolean {
  try {
    const spec: KernelSpec = JSON.parse(readFileSync(join(folder, 'kernel.json'), 'utf8'));
    return spec.metadata?.[owner] !== undefined;
  } catch {
    return false;
  }
}
