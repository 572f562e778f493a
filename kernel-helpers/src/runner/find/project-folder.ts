import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder of the whole project: the one above this file that holds the worksheets. */
export function projectFolder(): string {
  let folder = dirname(fileURLToPath(import.meta.url));
  // From the source and from the bundle the way up is not equally long.
  while (!existsSync(join(folder, 'worksheets')) && dirname(folder) !== folder) folder = dirname(folder);
  return folder;
}
