import { describe, expect, it } from 'vitest';
import { sizeBox } from '../../../kernel-helpers/src/piece/box/size-box.js';
import { boardFeet } from '../../../kernel-helpers/src/stock/boards/board-feet.js';
import { readSheets, sheetParts } from '../../../kernel-helpers/src/stock/cutting/sheet-goods.js';
import { trimmedBoards } from '../../../kernel-helpers/src/stock/milling/trimmed-boards.js';

const sheet = { mark: 'P', thickness: '13/64 in', width: '2 ft', length: '4 ft', price: 18 };

describe('plywood', () => {
  const { parts } = sizeBox({ insideLength: 9.5, insideWidth: 6.25, insideDepth: 4, species: 'walnut-black' });

  it('costs what its sheet costs', () => {
    const [board] = readSheets([sheet]);
    expect(boardFeet(board as NonNullable<typeof board>) * (board?.price ?? 0)).toBeCloseTo(18, 12);
    expect(trimmedBoards({ boards: readSheets([sheet]), edges: '1/4 in' })[0]?.cut).toMatchObject({
      ...{ cost: 1800, width: 23.5 },
    });
  });

  it('is laid both ways unless its grain matters, with nothing over', () => {
    const [along, turned] = sheetParts({ parts });
    expect(along).toEqual([
      { name: 'bottom', count: 1, length: 9.953125, width: 6.703125, thickness: 0.203125 - 1 / 64 },
    ]);
    expect(turned?.[0]).toMatchObject({ length: 6.703125, width: 9.953125 });
    expect(sheetParts({ parts, grain: true })).toHaveLength(1);
  });

  it('is refused in one line where there is none, or a sheet is not possible', () => {
    expect(() => sheetParts({ parts: parts.filter(({ name }) => name !== 'bottom') })).toThrow(
      'parts: no plywood among side',
    );
    expect(() => readSheets([{ ...sheet, thickness: '5 in' }])).toThrow('no. 1, thickness: "5 in" given');
    expect(() => readSheets([sheet, sheet])).toThrow('mark: "P" stands on two sheets');
    expect(readSheets([])).toEqual([]);
  });
});
