import type { CellStatus, Execution, Kernel } from '../kernel/kernel.js';
import { errorText, lostError, type Output } from '../kernel/outputs.js';
import { failedLine, type SourceLine } from './failed-line.js';
import type { Cell, Notebook } from './notebook.js';

/** Why a sheet stopped, and where. */
export interface SheetFailure {
  /** The code cell, counted from 1 as Jupyter counts them in brackets beside the cells. */
  cell: number;
  cells: number;
  status: CellStatus;
  line?: SourceLine;
  /** Whether the message says all by itself: what was typed, and what is possible. */
  plain: boolean;
  message: string;
}

/** What a run of a sheet may take, and who hears of its progress. */
export interface SheetOptions {
  /** Time limit of each cell. */
  seconds: number;
  signal?: AbortSignal;
  /** Called before each code cell is run. */
  onCell?: (cell: number, cells: number) => void;
}

/** The cells of a notebook that a kernel is to run: as in Jupyter, an empty one is passed over. */
export function codeCells(notebook: Notebook): Cell[] {
  return notebook.cells.filter((cell) => cell.cell_type === 'code' && cell.source.trim() !== '');
}

/** Runs a sheet's code cells from top to bottom in a fresh kernel, and stops at the first that is not `ok`. */
export async function runSheet(
  kernel: Kernel,
  sheet: Notebook,
  { seconds, signal, onCell }: SheetOptions,
): Promise<{ executed: Notebook; failure?: undefined } | { executed?: undefined; failure: SheetFailure }> {
  const cells = codeCells(sheet);
  const shown: Output[][] = [];
  for (const [index, cell] of cells.entries()) {
    onCell?.(index + 1, cells.length);
    const execution = await kernel.execute(cell.source, { seconds, signal });
    if (execution.status !== 'ok') return { failure: failureOf(cells, index, execution, seconds) };
    shown.push(execution.outputs);
  }
  const executed = sheet.cells.map((cell) => {
    if (cell.cell_type !== 'code') return cell;
    const index = cells.indexOf(cell);
    return { ...cell, outputs: shown[index] ?? [], execution_count: index < 0 ? null : index + 1 };
  });
  return { executed: { ...sheet, cells: executed, metadata: { ...sheet.metadata, language_info: kernel.language } } };
}

function failureOf(cells: Cell[], index: number, execution: Execution, seconds: number): SheetFailure {
  const error = errorText(execution.outputs);
  const plain = execution.status === 'error' && execution.failed?.plain === true;
  return {
    cell: index + 1,
    cells: cells.length,
    status: execution.status,
    line: plain ? undefined : failedLine(cells[index]?.source ?? '', error, execution.failed?.line),
    plain,
    message: explain(execution, error, seconds),
  };
}

function explain({ status, end, outputs }: Execution, error: string, seconds: number): string {
  if (status === 'too long')
    return `the cell took longer than ${seconds} seconds and was stopped; --limit gives it more`;
  if (status === 'stopped') return 'stopped';
  if (status === 'kernel ended') return `the kernel ended in this cell: ${end}`;
  if (status === 'abort') return 'the kernel refused to run this cell';
  const lost = lostError(outputs);
  const told = (lost ?? error).replace(/^\d+:\d+ - /gm, '');
  // The stack leads into code that nobody sees.
  const plain = told.split(/\n\s+at /)[0];
  return plain?.trim() || 'the cell failed without a word';
}
