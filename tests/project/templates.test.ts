import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';

interface Cell {
  id?: string;
  cell_type: string;
  metadata: { tags?: string[] };
  source: string | string[];
  outputs?: unknown[];
  execution_count?: number | null;
}

interface Sheet {
  nbformat: number;
  nbformat_minor: number;
  metadata: { kernelspec?: unknown };
  cells: Cell[];
}

const worksheets = join(import.meta.dirname, '..', '..', 'worksheets');
const names = readdirSync(worksheets, { recursive: true, encoding: 'utf8' }).filter(
  (name) => name.endsWith('.ipynb') && !name.includes('.ipynb_checkpoints'),
);

test('there are sheets for a commission', () => {
  expect(names.length).toBeGreaterThan(0);
});

describe.each(names)('%s', (name) => {
  const sheet: Sheet = JSON.parse(readFileSync(join(worksheets, name), 'utf8'));
  const code = sheet.cells.filter((cell) => cell.cell_type === 'code');

  test('is a notebook of format 4.5 for the TypeScript kernel', () => {
    expect([sheet.nbformat, sheet.nbformat_minor]).toEqual([4, 5]);
    expect(sheet.metadata.kernelspec).toEqual({ name: 'tslab', display_name: 'TypeScript', language: 'typescript' });
  });

  test('is committed without outputs', () => {
    const run = code.filter((cell) => cell.outputs?.length !== 0 || cell.execution_count !== null);
    expect(run.map((cell) => cell.id)).toEqual([]);
  });

  test('has an id of its own for every cell', () => {
    const ids = sheet.cells.map((cell) => cell.id ?? '');
    expect(ids.filter((id) => !/^[A-Za-z0-9_-]{1,64}$/.test(id))).toEqual([]);
    expect(new Set(ids).size).toBe(ids.length);
  });

  test('has short code cells: twelve lines at most besides parameters and imports', () => {
    const long = code.filter(({ metadata, source }) => {
      const lines = [source]
        .flat()
        .join('')
        .replace(/^import [^;]*;\n/gm, '')
        .split('\n')
        .filter((line) => line.trim());
      return lines.length > 12 && !metadata.tags?.includes('parameters');
    });
    expect(long.map((cell) => cell.id)).toEqual([]);
  });

  test('has no line of code wider than 110 columns', () => {
    const lines = code.flatMap(({ source }) => [source].flat().join('').split('\n'));
    expect(lines.filter((line) => line.length > 110)).toEqual([]);
  });

  test('has one cell of parameters, if it computes at all', () => {
    if (code.length > 0) expect(code.filter((cell) => cell.metadata.tags?.includes('parameters'))).toHaveLength(1);
  });
});
