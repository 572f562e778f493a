import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readBoards } from '../../../kernel-helpers/src/stock/boards/boards.js';
import { boardLayouts } from '../../../kernel-helpers/src/stock/cutting/board-layouts.js';
import { offcutBoards } from '../../../kernel-helpers/src/stock/cutting/offcuts.js';
import { setUps } from '../../../kernel-helpers/src/stock/cutting/set-ups.js';
import { readPlaner } from '../../../kernel-helpers/src/stock/milling/planer.js';
import { roughCut } from '../../../kernel-helpers/src/stock/milling/rough-cut.js';
import { trimmedBoards } from '../../../kernel-helpers/src/stock/milling/trimmed-boards.js';
import { handMade, kerf, planOf, sawnAtRandom } from '../hand-made-plan.js';

const boards = trimmedBoards({
  boards: readBoards([
    { mark: 'A', thickness: '4/4', width: '8 in', length: '4 ft', price: 10, sapwoodLower: '1/2 in', bow: '1/4 in' },
    { mark: 'B', thickness: '4/4', width: '7 in', length: '3 ft', price: 10 },
  ]),
  ends: '1 in',
});
const plan = planOf(...boards.map(({ cut }) => handMade(cut)));
const layouts = boardLayouts({ plan, boards, kerf });

describe('a plan on the boards as they lie there', () => {
  it('is measured from the marked end and the lower edge of the whole board', () => {
    expect(layouts[0]?.parts[0]).toMatchObject({ number: 1, name: 'side', fromEnd: 1, fromEdge: 0.5 });
    expect(layouts[1]?.parts[0]).toMatchObject({ number: 3, name: 'side', fromEnd: 1, fromEdge: 0 });
  });

  it('trims ends and sapwood before anything else, with the kerf in the waste', () => {
    const cuts = layouts[0]?.cuts ?? [];
    expect(cuts.map(({ number, kind, at, trims }) => [number, kind, at, trims])).toEqual([
      [1, 'crosscut', 1 - kerf, true],
      [2, 'crosscut', 47, true],
      [3, 'rip', 0.5 - kerf, true],
      [4, 'crosscut', 13, false],
      [5, 'rip', 4.5, false],
      [6, 'rip', 6.125, false],
    ]);
  });

  it('names a board that it does not have', () => {
    expect(() => boardLayouts({ plan, boards: boards.slice(0, 1), kerf })).toThrow('plan: board B given; possible: A');
  });
});

describe('the list by set-up', () => {
  it('sets stop and fence once for all cuts of one size, over all boards', () => {
    const list = setUps({ layouts, kerf }).map(({ machine, setting, pieces }) => [machine, setting, pieces]);
    expect(list).toEqual([
      ['crosscut stop', 12, ['board A: cut 4 (side, rail)', 'board B: cut 3 (side, rail)']],
      ['band saw fence', 4, ['board A: cut 5 (side)', 'board B: cut 4 (side)']],
      ['band saw fence', 1.5, ['board A: cut 6 (rail)', 'board B: cut 5 (rail)']],
    ]);
  });

  it('refuses a cut that no saw can make', () => {
    const layout = layouts[1] as (typeof layouts)[number];
    const wrong = {
      ...layout,
      cuts: [{ kind: 'rip' as const, at: 2, from: 0, to: 5, number: 1, trims: false, afterPlaning: false }],
    };
    expect(() => setUps({ layouts: [wrong], kerf })).toThrow('board B: cut 1 does not go right across a piece');
  });

  it('holds every cut of a plan once', () => {
    fc.assert(
      fc.property(sawnAtRandom, (sawn) => {
        const [whole] = trimmedBoards({ boards: [{ ...sawn.board, price: 1 }] });
        const made = boardLayouts({ plan: planOf(sawn), boards: [whole as NonNullable<typeof whole>], kerf });
        const pieces = setUps({ layouts: made, kerf }).flatMap((setUp) => setUp.pieces);
        const numbers = pieces.map((piece) => Number(/cut (\d+)/.exec(piece)?.[1])).sort((a, b) => a - b);
        expect(numbers).toEqual(sawn.cuts.map((_, i) => i + 1));
      }),
    );
  });

  it('keeps the cuts of a board in their order: a stop measures from the end that the cut before has made', () => {
    fc.assert(
      fc.property(fc.tuple(sawnAtRandom, sawnAtRandom), (pair) => {
        const marked = pair.map((sawn, i) => ({ ...sawn, board: { ...sawn.board, mark: 'AB'[i] as string } }));
        const own = trimmedBoards({ boards: marked.map(({ board }) => ({ ...board, price: 1 })) });
        const list = setUps({ layouts: boardLayouts({ plan: planOf(...marked), boards: own, kerf }), kerf });
        for (const mark of 'AB') {
          const numbers = list.flatMap(({ pieces }) =>
            pieces.flatMap((piece) => new RegExp(`board ${mark}: cut (\\d+)`).exec(piece)?.[1] ?? []),
          );
          expect(numbers.map(Number)).toEqual(numbers.map(Number).sort((a, b) => a - b));
        }
      }),
    );
  });

  it('planes and cuts to final size from large to small', () => {
    const rough = [
      {
        ...{ name: 'lid', count: 1, length: 11, width: 7, thickness: 1, called: '4/4' },
        finished: { length: 10, width: 6.5, thickness: 0.5 },
      },
      {
        ...{ name: 'side', count: 2, length: 12, width: 5, thickness: 1, called: '4/4' },
        finished: { length: 11, width: 4.75, thickness: 0.625 },
      },
      {
        ...{ name: 'box lid', count: 1, length: 10, width: 7, thickness: 1, called: '4/4' },
        finished: { length: 9, width: 6.5, thickness: 0.5 },
      },
    ];
    const blanks = rough.map(({ name, length, width, finished }) => ({
      ...{ name, parts: [name], length, width, thickness: finished.thickness },
      because: 'part' as const,
    }));
    const partOf = Object.fromEntries(rough.map(({ name }) => [name, name]));
    expect(
      setUps({
        layouts: [],
        cut: { rough, panels: [], toCut: { blanks, parts: [], partOf }, planer: readPlaner() },
        kerf,
      }).map(({ machine, setting, pieces }) => [machine, setting, ...pieces]),
    ).toEqual([
      ['planer', 0.625, 'side'],
      ['planer', 0.5, 'lid', 'box lid'],
      ['rip fence', 6.5, 'lid', 'box lid'],
      ['rip fence', 4.75, 'side'],
      ['crosscut stop', 11, 'side, 2 pieces'],
      ['crosscut stop', 10, 'lid'],
      ['crosscut stop', 9, 'box lid'],
    ]);
  });

  it('planes the boards of a panel over, leaves their edges to the jointer, and brings the panel to thickness before its width', () => {
    const shelf = {
      ...{ name: 'shelf', count: 2, length: 30, width: 11, thickness: 0.75 },
      ...{ material: 'wood' as const, grain: 'side to side' as const, note: '' },
    };
    const cut = roughCut({ parts: [shelf], widestBoard: 6 });
    expect(
      setUps({ layouts: [], cut, kerf }).map(({ machine, setting, pieces }) => [machine, setting, pieces.at(-1)]),
    ).toEqual([
      ['planer', 0.8125, 'shelf board'],
      ['planer', 0.75, 'shelf, 2 pieces'],
      ['rip fence', 11, 'shelf, 2 pieces'],
      ['crosscut stop', 30, 'shelf, 2 pieces'],
    ]);
    const wide = roughCut({ parts: [shelf], widestBoard: 6, planer: { widest: 11 } });
    const planed = setUps({ layouts: [], cut: wide, kerf }).filter(({ machine }) => machine === 'planer');
    expect(
      planed.map(({ setting }) => setting),
      'never fed a panel wider than the planer',
    ).toEqual([0.8125]);
  });
});

describe('offcuts', () => {
  const made = offcutBoards({ layouts, taken: ['A-1'], species: 'walnut-black' });

  it('are boards of the stock with marks that nobody has', () => {
    expect(made.map(({ mark }) => mark)).toEqual(['A-2', 'B-1']);
    expect(made[0]).toMatchObject({ inHand: true, species: 'walnut-black', thickness: 1, price: 10 });
  });

  it('keep the bend of their board as far as it goes over them', () => {
    const share = (made[0]?.length as number) / 48;
    expect(made[0]?.bow).toBeCloseTo(0.25 * share ** 2, 12);
    expect(made[1]).not.toHaveProperty('bow');
  });

  it('of plywood stay plywood, whatever wood the piece is of', () => {
    const sheets = layouts.map((layout) => ({ ...layout, board: { ...layout.board, plywood: true } }));
    for (const piece of offcutBoards({ layouts: sheets, taken: [], species: 'walnut-black' })) {
      expect(piece).toMatchObject({ plywood: true });
      expect(piece).not.toHaveProperty('species');
    }
  });

  it('can be read as boards again', () => {
    expect(readBoards(made)).toEqual(made);
  });
});
