import { describe, expect, it } from 'vitest';
import { sizeBookcase } from '../../../kernel-helpers/src/piece/bookcase/bookcase.js';
import { sizeBox } from '../../../kernel-helpers/src/piece/box/size-box.js';
import { readBoards } from '../../../kernel-helpers/src/stock/boards/boards.js';
import {
  boardsWithYard,
  sheetsWithYard,
  yardBoards,
  yardFindings,
} from '../../../kernel-helpers/src/stock/cutting/from-yard.js';
import { readSheets, sheetParts } from '../../../kernel-helpers/src/stock/cutting/sheet-goods.js';
import { roughCut } from '../../../kernel-helpers/src/stock/milling/rough-cut.js';

const offered = { width: '8 in', length: '10 ft', price: 14 };
const { parts } = sizeBookcase({ species: 'cherry-black', width: 30, height: 48, depth: 11, shelves: 3 });
const small = sizeBox({ insideLength: 9.5, insideWidth: 6.25, insideDepth: 4, species: 'walnut-black' }).parts;
const own = readBoards([{ mark: 'A', thickness: '4/4', width: '8 in', length: '8 ft', price: 14 }]);

describe('boards from the yard', () => {
  it('are none where those measured give every part', () => {
    const yard = yardBoards({ yard: offered, parts: small });
    const cut = roughCut({ parts: small, boards: own });
    expect(boardsWithYard({ own, yard, cut, firstCut: 'crosscut' })).toEqual(own);
  });

  it('make up what is missing, and are said to be unseen', () => {
    const yard = yardBoards({ yard: offered, parts });
    // 3/4 in, 1/16 for the panels and 3/16 for milling: inch stock.
    expect(yard).toMatchObject([{ thickness: 1, width: 8, length: 120 }]);
    const cut = roughCut({ parts, widestBoard: '7 1/2 in', boards: [...own, ...yard] });
    const boards = boardsWithYard({ own, yard, cut, firstCut: 'crosscut' });
    expect(boards.slice(0, 1)).toEqual(own);
    // Fourteen boards of 5 5/8 in, one across 8 in: four of 48 3/4 in and ten of 29 3/4, 492 1/2 in of 10 ft less what A gives.
    expect(boards.length - 1).toBeGreaterThanOrEqual(Math.ceil((492.5 - 96) / 120));
    expect(new Set(boards.map(({ mark }) => mark)).size).toBe(boards.length);
    const said = (used: typeof boards) => yardFindings({ used, own })[0];
    expect(said(boards)).toMatchObject({ verdict: 'watch' });
    expect(said(boards)?.figures).toContain('yard 4/4 no. 1');
    expect(said(own)).toMatchObject({ verdict: 'ok' });
  });

  it('that do not do either are no endless order', () => {
    const yard = yardBoards({ yard: { ...offered, length: '2 ft' }, parts });
    const cut = roughCut({ parts, widestBoard: '7 1/2 in' });
    expect(() => boardsWithYard({ own, yard, cut, firstCut: 'crosscut' })).toThrow('do not fit on the boards given');
  });

  it('come as sheets as thick as the part', () => {
    const lists = sheetParts({ parts });
    const scrap = readSheets([{ mark: 'P', thickness: '13/64 in', width: '12 in', length: '24 in', price: 9 }]);
    const sheets = sheetsWithYard({
      ...{ own: scrap, yard: { width: 48, length: 96, price: 60 }, parts, lists, edges: '1/4 in', kerf: '1/8 in' },
    });
    expect(sheets.map(({ mark, thickness }) => [mark, thickness])).toEqual([
      ['P', 13 / 64],
      ['yard sheet 1 no. 1', 1 / 4],
    ]);
  });

  it.each([
    [{ width: 'wide' }, 'width: "wide" given'],
    [{ price: -1 }, 'price: -1 given; possible: a number from 0'],
  ])('%j is refused in one line', (bad, message) => {
    expect(() => yardBoards({ yard: { ...offered, ...bad }, parts })).toThrow(message);
  });
});
