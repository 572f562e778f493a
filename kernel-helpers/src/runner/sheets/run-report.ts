import { basename } from 'node:path';
import type { FinishedSheet, SheetsRun } from './run-sheets.js';

/** One line about a sheet that ran: `04-lid-through-the-year  9 cells  1.3 s  recorded lid, entry 3`. */
export function sheetLine({ file, cells, seconds }: FinishedSheet, outcome: string): string {
  return `  ${basename(file, '.ipynb').padEnd(26)} ${counted(cells, 'cell').padStart(8)} ${seconds.toFixed(1).padStart(6)} s  ${outcome}`;
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
