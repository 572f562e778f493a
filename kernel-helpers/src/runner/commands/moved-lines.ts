import type { MovedDecision } from '../../record/check/what-moved.js';
import type { MovedFigure } from '../../record/key-figures/moved.js';

/** Of each decision only its first figures: the table is to be taken in at a glance, and the sheets have the others. */
const ofEach = 2;

/** What moved, as the lines of a small table for the terminal; none when nothing did. */
export function movedLines(decisions: readonly MovedDecision[]): string[] {
  const told = new Set<string>();
  // The inside of a box stands in its brief and in its sizes.
  const isNews = (figure: MovedFigure) => told.size < told.add(JSON.stringify(figure)).size;
  const rows = decisions.flatMap(({ what, moved }) =>
    moved
      .filter(isNews)
      .slice(0, ofEach)
      .map(({ name, before = 'none', now = 'none' }, i) => [i === 0 ? what : '', name, before, now]),
  );
  if (rows.length === 0) return [];
  const table = [['What moved', '', 'before', 'now'], ...rows];
  const widths = [0, 1, 2].map((column) => Math.max(...table.map((row) => row[column]?.length ?? 0)));
  return table.map((row) => `  ${row.map((text, column) => text.padEnd(widths[column] ?? 0)).join('  ')}`.trimEnd());
}
