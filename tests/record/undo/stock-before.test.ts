import { expect, it } from 'vitest';
import type { Entry } from '../../../kernel-helpers/src/record/chain/entry.js';
import { memoryStore } from '../../../kernel-helpers/src/record/store/memory-store.js';
import { stockBefore } from '../../../kernel-helpers/src/record/undo/stock-before.js';

const board = { mark: 'S1', thickness: 1, width: 7, length: 60, price: 12 };
const offcut = (mark: string) => ({ mark, thickness: 1, width: 6, length: 30, price: 10, inHand: true });
const turn = (mark: string) => ({ offered: { boards: [], marks: [] }, used: [], offcuts: [offcut(mark)] });
const shop = () => memoryStore({ stock: { boards: [board], commissions: { chest: turn('A-1'), tray: turn('T-1') } } });
const marks = (stock: ReturnType<typeof shop>) => {
  const { commissions } = stock.stock.read() as { commissions: Record<string, { offcuts: { mark: string }[] }> };
  return Object.values(commissions).flatMap(({ offcuts }) => offcuts.map(({ mark }) => mark));
};

it('a plan that was withdrawn leaves no offcut and uses no board; others stay as they were', () => {
  const store = shop();
  stockBefore(store.stock, 'chest', undefined);
  expect(marks(store)).toEqual(['T-1']);
  expect(store.stock.read()).toMatchObject({ boards: [board] });
});

it('the plan before it counts again', () => {
  const store = shop();
  const results = { boards: [board], offcuts: [offcut('B-1')] };
  const offered = { boards: [{ ...board, inHand: true }], marks: ['S1'] };
  stockBefore(store.stock, 'chest', { results, inputs: { offered } } as unknown as Entry);
  expect(marks(store).sort()).toEqual(['B-1', 'T-1']);
  expect(store.stock.read()).toMatchObject({ commissions: { chest: { used: ['S1'] } } });
});

it('a shop without stock gets none', () => {
  const store = memoryStore();
  stockBefore(store.stock, 'chest', undefined);
  expect(store.stock.read()).toBeUndefined();
});
