import * as z from 'zod';
import { readParameters } from '../../measure/parameters.js';
import { ShopError } from '../../measure/shop-error.js';
import type { PiecePart } from '../../piece/piece.js';
import type { Panel } from './panels.js';

/** `round the corners`, or parts in the order in which the figure runs: `[['side', 'front', 'side', 'back']]`. */
export type Figure = string | readonly (readonly string[])[];

const fields = z.object({
  figure: z.union([z.literal('round the corners'), z.array(z.array(z.string()))], {
    error: "possible: 'round the corners', or lists of parts in order (how the figure runs from part to part)",
  }),
});

/**
 * Rows of parts whose figure runs on. Round the corners it does on four boards of one height and thickness, left alone elsewhere; on
 * panels it does in each row of their boards.
 *
 * @returns names as the rough parts have them
 * @throws ShopError  a figure that is none; a row of panels with unlike numbers of boards
 * @internal
 */
export function figureRows(figure: Figure, parts: readonly PiecePart[], panels: readonly Panel[]): string[][] {
  const read = readParameters(fields, { figure }).figure;
  const rows = typeof read === 'string' ? aroundCorners(parts) : read;
  return rows.flatMap((row) => boardByBoard(row, panels));
}

function aroundCorners(parts: readonly PiecePart[]): string[][] {
  const around = ['side', 'front', 'side', 'back'];
  const boards = parts.filter(({ name, material }) => around.includes(name) && material === 'wood');
  const sizes = new Set(boards.map(({ thickness, width, widthBefore = width }) => `${thickness} ${widthBefore}`));
  const count = boards.reduce((sum, part) => sum + part.count, 0);
  return boards.length === 3 && count === 4 && sizes.size === 1 ? [around] : [];
}

function boardByBoard(sequence: readonly string[], panels: readonly Panel[]): string[][] {
  const panelOf = (name: string) => panels.find(({ part }) => part === name);
  const rows = new Set(sequence.map((name) => panelOf(name)?.boards ?? 1));
  if (rows.size > 1)
    throw new ShopError(
      `sequences: ${sequence.join(', ')} given, glued up from ${[...rows].join(' and ')} boards; possible: parts of as many boards each`,
    );
  const row = sequence.map((name) => panelOf(name)?.board.name ?? name);
  return Array.from({ length: [...rows][0] ?? 1 }, () => row);
}
