/**
 * The pricing of one board against published problems: the most value from one rectangle.
 * Plates with defects: values by full dynamic programmes (see the file); two-stage problems: proven optimum in print.
 */
import { readFileSync } from 'node:fs';
import loadHighs from 'highs';
import { expect, test } from 'vitest';
import { boardGrid } from '../../kernel-helpers/src/stock/cut-plan/board-grid.js';
import { BoardValues } from '../../kernel-helpers/src/stock/cut-plan/board-values.js';
import type { GridBoard, GridDefect } from '../../kernel-helpers/src/stock/cut-plan/grid-job.js';
import { asBoard, mostValue, type TwoStage } from '../stock/cut-plan/most-value.js';

interface Plate {
  name: string;
  stock: { w: number; h: number };
  defects: { x: number; y: number; w: number; h: number }[];
  items: [length: number, width: number, value: number][];
  crosscutFirst: number;
  ripFirst: number;
  anyStages: number;
}

const problems = <T>(name: string) =>
  (JSON.parse(readFileSync(new URL(`cutting/${name}.json`, import.meta.url), 'utf8')) as { problems: T[] }).problems;

const highs = await loadHighs();

const rectangle = (length: number, width: number, parts: number, defects: GridDefect[]): GridBoard => ({
  length,
  width,
  cost: 1,
  area: length * width,
  takes: Array.from({ length: parts }, () => true),
  defects,
});

test('a plate with defects gives exactly what the full dynamic programme finds, in both cut orders', () => {
  for (const { name, stock, defects, items, crosscutFirst, ripFirst, anyStages } of problems<Plate>(
    'defects-one-board',
  )) {
    const parts = items.map(([length, width]) => ({
      length,
      width,
      count: Math.floor(stock.w / length) * Math.floor(stock.h / width),
    }));
    const stains = defects.map(({ x, y, w, h }) => ({ x1: x, x2: x + w, y1: y, y2: y + h }));
    const board = rectangle(stock.w, stock.h, parts.length, stains);
    const values = items.map(([, , value]) => value);
    const best = (crosscut: boolean) =>
      new BoardValues(boardGrid({ boards: [board], parts, firstCut: 'rip' }, board), values, crosscut).best;
    expect(best(true), name).toBe(crosscutFirst);
    expect(best(false), name).toBe(ripFirst);
    expect(best(true), name).toBeLessThanOrEqual(anyStages);
  }
});

test('two-stage problems of print: no plan above the optimum, no limit below it, and the optimum wherever the search ends', () => {
  let ended = 0;
  for (const problem of problems<TwoStage>('two-stage-knapsack')) {
    const { name, optimum } = problem;
    const { value, limit, proven } = mostValue(highs, asBoard(problem), 1_000_000);
    expect(limit, name).toBeGreaterThanOrEqual(optimum);
    expect(value, name).toBeLessThanOrEqual(optimum);
    if (proven) expect(value, name).toBe(optimum);
    if (proven) ended++;
  }
  // 47 of 53 within a million steps when this was written.
  expect(ended).toBeGreaterThanOrEqual(45);
}, 120_000);
