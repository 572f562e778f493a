import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readNotebook } from '../../kernel-helpers/src/runner/sheets/notebook.js';

export const root = join(import.meta.dirname, '..', '..');

/** Every notebook of worksheets/, as paths from the root with slashes. */
export const notebooks = readdirSync(join(root, 'worksheets'), { recursive: true, encoding: 'utf8' })
  .map((name) => `worksheets/${name.replaceAll('\\', '/')}`)
  .filter((name) => name.endsWith('.ipynb') && !name.includes('.ipynb_checkpoints'))
  .sort();

/** The prose of a notebook or a Markdown file. */
export function proseOf(file: string): string {
  const path = join(root, file);
  if (!file.endsWith('.ipynb')) return readFileSync(path, 'utf8');
  return readNotebook(path)
    .cells.filter(({ cell_type }) => cell_type === 'markdown')
    .map(({ source }) => source)
    .join('\n\n');
}

/** Prose without code, so that only its words are left. */
export function withoutCode(prose: string): string {
  return prose.replace(/^```[\s\S]*?^```/gm, ' ').replace(/`[^`\n]*`/g, ' ');
}
