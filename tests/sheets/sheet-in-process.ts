import { readFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { runInNewContext, runInThisContext } from 'node:vm';
import { transformSync } from 'esbuild';
import * as helpers from '../../kernel-helpers/src/index.js';

/** A sheet's parameters as they come, and what its cells do with others. */
export interface SheetInProcess {
  parameters: Record<string, unknown>;
  /** Runs the cells without a kernel, as practice, and shows nothing. */
  run(parameters: object): Promise<void>;
}

/** A template sheet, to be tried with many parameters in the time that a kernel takes to start. */
export function sheetInProcess(file: string): SheetInProcess {
  const { cells } = JSON.parse(readFileSync(file, 'utf8')) as {
    cells: { cell_type: string; metadata: { tags?: string[] }; source: string[] }[];
  };
  const code = cells.filter(({ cell_type }) => cell_type === 'code');
  const typed = code.find(({ metadata }) => metadata.tags?.includes('parameters'))?.source.join('') ?? '';
  const read = runInNewContext(typed.replace(/^const parameters = (.*);\s*$/s, '($1)'));
  // Each cell in a block of its own within the one before: it sees the names of that, and may give them anew.
  const blocks = code.map(({ metadata, source }) =>
    metadata.tags?.includes('parameters')
      ? '{ const parameters = given;'
      : `{ ${source.join('').replace(/^import (\{[^}]*\}) from 'kernel-helpers';/gm, 'const $1 = helpers;')}`,
  );
  const body = `async (helpers: any, given: any) => ${blocks.join('\n')}${'}'.repeat(blocks.length)}`;
  const sheet = runInThisContext(transformSync(`(${body})`, { loader: 'ts' }).code) as (
    given: object,
    parameters: object,
  ) => Promise<void>;
  // What a stop keeps out of the record is not what cannot be.
  const openCommission = () =>
    Object.assign(helpers.openCommission({ folder: dirname(file), notify: () => {} }), { decide: () => {} });
  return {
    parameters: JSON.parse(JSON.stringify(read)),
    run: (parameters) => sheet({ ...helpers, openCommission, show: () => {} }, parameters),
  };
}
