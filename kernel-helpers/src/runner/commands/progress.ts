import { clearLine, cursorTo } from 'node:readline';
import type { Writable } from 'node:stream';

/** Shows how far a run has come. */
export interface Progress {
  /** A cell of a sheet has begun. */
  cell(sheet: string, cell: number, cells: number): void;
  /** A line that stays. */
  line(text: string): void;
}

/**
 * Progress on a terminal is one line that is written over, with the seconds counting up; elsewhere just the lines that
 * stay.
 */
export function progressOn(stream: Writable & { isTTY?: boolean; columns?: number }): Progress {
  let now: { sheet: string; cell: number; cells: number; since: number } | undefined;
  let ticking: NodeJS.Timeout | undefined;

  const wipe = () => {
    cursorTo(stream, 0);
    clearLine(stream, 0);
  };
  const draw = () => {
    if (!now) return;
    const seconds = (performance.now() - now.since) / 1000;
    const text = `${now.sheet}  cell ${now.cell} of ${now.cells}  ${seconds.toFixed(1)} s`;
    wipe();
    stream.write(text.slice(0, (stream.columns ?? 80) - 1));
  };

  return {
    cell(sheet, cell, cells) {
      if (!stream.isTTY) return;
      now = { sheet, cell, cells, since: now?.sheet === sheet ? now.since : performance.now() };
      ticking ??= setInterval(draw, 200).unref();
      draw();
    },
    line(text) {
      if (now) wipe();
      now = undefined;
      clearInterval(ticking);
      ticking = undefined;
      stream.write(`${text}\n`);
    },
  };
}
