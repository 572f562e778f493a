import { basename } from 'node:path';
import type { FinishedSheet, SheetsRun } from './run-sheets.js';

/** One line about a sheet: `04-lid-through-the-year  1.3 s  recorded, entry 4: plane to 6.657 in`. */
export function sheetLine({ file, seconds }: Pick<FinishedSheet, 'file' | 'seconds'>, outcome: string): string {
  const took = seconds === undefined ? '' : `${seconds.toFixed(1)} s`;
  return `  ${basename(file, '.ipynb').padEnd(26)} ${took.padStart(7)}  ${outcome}`.trimEnd();
}

/** Where a run stopped and why: sheet, cell, line and error; or the sheet and what was typed in it. */
export function failureText({ file, cell, cells, line, plain, message }: NonNullable<SheetsRun['failure']>): string {
  if (plain) return `${basename(file, '.ipynb')}, ${message}`;
  const place = cell === 0 ? `${file}, before its first cell` : `${file}, cell ${cell} of ${cells}`;
  const source = line ? [`  line ${line.number}:  ${line.text}`] : [];
  const text = message.split('\n').map((each) => `  ${each}`);
  return [`Stopped at ${place}.`, ...source, ...text].join('\n');
}

/** A number with its word: "1 cell", "2 cells". */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}
