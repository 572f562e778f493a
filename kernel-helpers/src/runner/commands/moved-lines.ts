import type { MovedDecision } from '../../record/check/what-moved.js';

/** Of each decision only its first figures: the table is to be taken in at a glance, and the sheets have the others. */
const ofEach = 2;

/** What moved, as the lines of a small table for the terminal; none when nothing did. */
export function movedLines(decisions: readonly MovedDecision[]): string[] {
  const rows = decisions.flatMap(({ what, moved }) =>
    moved
      .slice(0, ofEach)
      .map(({ name, before = 'none', now = 'none' }, i) => [i === 0 ? what : '', name, before, now]),
  );
  if (rows.length === 0) return [];
  const table = [['What moved', '', 'before', 'now'], ...rows];
  const widths = [0, 1, 2].map((column) => Math.max(...table.map((row) => row[column]?.length ?? 0)));
  return table.map((row) => `  ${row.map((text, column) => text.padEnd(widths[column] ?? 0)).join('  ')}`.trimEnd());
}
