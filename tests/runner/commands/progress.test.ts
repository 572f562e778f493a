import { PassThrough } from 'node:stream';
import { expect, test, vi } from 'vitest';
import { progressOn } from '../../../kernel-helpers/src/runner/commands/progress.js';

function shown(isTTY: boolean, use: (progress: ReturnType<typeof progressOn>) => void): string {
  const stream = Object.assign(new PassThrough(), { isTTY, columns: 40 });
  vi.useFakeTimers();
  try {
    use(progressOn(stream));
  } finally {
    vi.useRealTimers();
  }
  return String(stream.read() ?? '');
}

const run = (progress: ReturnType<typeof progressOn>) => {
  progress.cell('04-lid', 1, 9);
  progress.cell('04-lid', 2, 9);
  vi.advanceTimersByTime(1000);
  progress.line('04-lid done');
};

test('a terminal shows sheet, cell and seconds on one line, which the finished line takes over', () => {
  const text = shown(true, run);
  expect(text).toContain('04-lid  cell 2 of 9  1.0 s');
  expect(text.split('\n')).toHaveLength(2);
  expect(text.endsWith('\u001b[2K04-lid done\n')).toBe(true);
});

test('the line never grows wider than the terminal', () => {
  const text = shown(true, (progress) => progress.cell('a sheet with a very long name indeed, longer than that', 1, 9));
  expect(text.split('\u001b[2K').every((part) => part.length < 40)).toBe(true);
});

test('a file or a pipe gets the lines that stay, and no codes', () => {
  expect(shown(false, run)).toBe('04-lid done\n');
});
