import { existsSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';

/** Whether a folder is a commission's: it stands directly inside a folder named `commissions`. @internal */
export function isCommission(folder: string): boolean {
  return basename(dirname(folder)) === 'commissions';
}

/** The daybook's folder of data, seen from a commission in it or from a folder of sheets. @internal */
export function dataFolder(folder: string): string {
  if (isCommission(folder)) return dirname(dirname(folder));
  if (existsSync(join(folder, 'data', 'commissions'))) return join(folder, 'data');
  const above = dirname(folder);
  return above === folder ? folder : dataFolder(above);
}
