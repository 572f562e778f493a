import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import * as z from 'zod';
import { ShopError } from '../../measure/shop-error.js';
import type { MimeBundle, Output } from '../kernel/outputs.js';

/** A cell of a notebook; its source is one string, in the file a list of lines. */
export interface Cell {
  cell_type: 'code' | 'markdown' | 'raw';
  id: string;
  metadata: { tags?: string[]; [key: string]: unknown };
  source: string;
  /** Code cells only. */
  outputs?: Output[];
  /** Code cells only. */
  execution_count?: number | null;
}

/** A notebook in Jupyter's own format, version 4.5 or newer. */
export interface Notebook {
  cells: Cell[];
  metadata: Record<string, unknown>;
  nbformat: 4;
  nbformat_minor: number;
}

const text = z.union([z.string(), z.array(z.string()).transform((lines) => lines.join(''))]);
const metadata = z.record(z.string(), z.unknown());
const bundle = z.record(z.string(), z.unknown()).transform(joinTexts);
const output = z.discriminatedUnion('output_type', [
  z.object({ output_type: z.literal('stream'), name: z.enum(['stdout', 'stderr']), text }),
  z.object({ output_type: z.literal('display_data'), data: bundle, metadata }),
  z.object({
    output_type: z.literal('execute_result'),
    data: bundle,
    metadata,
    execution_count: z.int().nullable(),
  }),
  z.object({
    output_type: z.literal('error'),
    ename: z.string(),
    evalue: z.string(),
    traceback: z.array(z.string()),
  }),
]);
const cell = {
  id: z.string().regex(/^[a-zA-Z0-9_-]{1,64}$/, 'must be 1 to 64 letters, digits, - or _'),
  metadata: z.looseObject({ tags: z.array(z.string().regex(/^[^,]+$/, 'must be without a comma')).optional() }),
  source: text,
};
const shape = z.object({
  cells: z.array(
    z.discriminatedUnion('cell_type', [
      z.looseObject({
        ...cell,
        cell_type: z.literal('code'),
        outputs: z.array(output),
        execution_count: z.int().nullable(),
      }),
      z.looseObject({ ...cell, cell_type: z.literal('markdown') }),
      z.looseObject({ ...cell, cell_type: z.literal('raw') }),
    ]),
  ),
  metadata,
  nbformat: z.literal(4),
  nbformat_minor: z.int().min(5),
});

/**
 * Reads a notebook.
 *
 * @throws ShopError  when it cannot be read or is not a notebook of nbformat 4.5, with the cell and the field
 */
export function readNotebook(path: string): Notebook {
  const name = basename(path);
  let json: unknown;
  try {
    json = JSON.parse(readFileSync(path, 'utf8'));
  } catch (error) {
    throw new ShopError(
      `${name} cannot be read as a notebook (${(error as Error).message}); put back a copy from before, or take the template from worksheets/commission again.`,
    );
  }
  const read = shape.safeParse(json);
  if (!read.success) throw new ShopError(`${name} is not a notebook of format 4.5: ${problem(read.error)}.`);
  const notebook = read.data as Notebook;
  const ids = notebook.cells.map((each) => each.id);
  const twice = ids.findIndex((id, i) => ids.indexOf(id) < i);
  if (twice >= 0) {
    throw new ShopError(`${name}: cells ${ids.indexOf(ids[twice] as string) + 1} and ${twice + 1} have the same id.`);
  }
  return notebook;
}

/** The notebook as Jupyter itself writes it: keys sorted, an indent of one space, texts as lists of lines. */
export function notebookText(notebook: Notebook): string {
  const cells = notebook.cells.map((each) => ({
    ...each,
    source: lines(each.source),
    ...(each.outputs && { outputs: each.outputs.map(outputInFile) }),
  }));
  return `${JSON.stringify(sorted({ ...notebook, cells }), null, 1)}\n`;
}

function problem(error: z.ZodError): string {
  const { path, message } = error.issues[0] as z.core.$ZodIssue;
  const [first, index, ...rest] = path;
  const where = first === 'cells' && typeof index === 'number' ? ['cell', index + 1, ...rest] : path;
  return `${where.join(' ') || 'the file'}: ${message}`;
}

function outputInFile(each: Output): unknown {
  if (each.output_type === 'stream') return { ...each, text: lines(each.text) };
  if (!('data' in each)) return each;
  const data = Object.entries(each.data).map(([mime, value]) => [
    mime,
    typeof value === 'string' && !isJson(mime) ? lines(value) : value,
  ]);
  return { ...each, data: Object.fromEntries(data) };
}

function joinTexts(data: MimeBundle): MimeBundle {
  const joined = Object.entries(data).map(([mime, value]) => [
    mime,
    Array.isArray(value) && !isJson(mime) ? value.join('') : value,
  ]);
  return Object.fromEntries(joined);
}

function isJson(mime: string): boolean {
  return /^application\/(.*\+)?json$/.test(mime);
}

function lines(whole: string): string[] {
  return whole.match(/[^\n]*\n|[^\n]+/g) ?? [];
}

function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sorted);
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return Object.fromEntries(entries.map(([key, each]) => [key, sorted(each)]));
}
