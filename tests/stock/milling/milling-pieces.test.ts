import { describe, expect, it } from 'vitest';
import { sizeBookcase } from '../../../kernel-helpers/src/piece/bookcase/bookcase.js';
import { sizeBox } from '../../../kernel-helpers/src/piece/box/size-box.js';
import { sizeDrawer } from '../../../kernel-helpers/src/piece/drawer/drawer.js';
import { sizeFrameAndPanel } from '../../../kernel-helpers/src/piece/frame-and-panel/frame-and-panel.js';
import type { PiecePart } from '../../../kernel-helpers/src/piece/piece.js';
import { sizeSolidTop } from '../../../kernel-helpers/src/piece/solid-top/solid-top.js';
import { readBoards, type TypedBoard } from '../../../kernel-helpers/src/stock/boards/boards.js';
import { type MillingLossInput, millingLoss } from '../../../kernel-helpers/src/stock/milling/milling-loss.js';
import { roughCut } from '../../../kernel-helpers/src/stock/milling/rough-cut.js';
import { trimmedBoards } from '../../../kernel-helpers/src/stock/milling/trimmed-boards.js';
import { handMade, planOf } from '../hand-made-plan.js';

const moving = { species: 'walnut-black', ringAngle: 0, fittingMoisture: 8 };
const year = Array.from({ length: 12 }, (_, i) => ({ month: i + 1, temperatureC: 20, relativeHumidity: 0.45 }));
const wide: TypedBoard = { mark: 'A', thickness: '8/4', width: '20 in', length: '12 ft', price: 10 };

const pieces: [string, PiecePart[]][] = [
  ['box', sizeBox({ insideLength: 9.5, insideWidth: 6.25, insideDepth: 4, species: 'walnut-black' }).parts],
  [
    'bookcase',
    sizeBookcase({ species: 'walnut-black', width: '30 in', height: '40 in', depth: '9 in', shelves: 2 }).parts,
  ],
  [
    'drawer',
    sizeDrawer({
      ...moving,
      air: year,
      opening: '5 in',
      openingWidth: '16 in',
      openingDepth: '15 in',
    }).parts,
  ],
  ['solid top', sizeSolidTop({ ...moving, air: year, length: '40 in', width: '18 in' }).parts],
  ['frame and panel', sizeFrameAndPanel({ ...moving, air: year, width: '16 in', height: '24 in' }).parts],
];

describe('every kind of piece', () => {
  it.each(pieces)('a %s is milled from rough boards', (_, parts) => {
    const boards = readBoards(['A', 'B', 'C', 'D'].map((mark) => ({ ...wide, mark })));
    const cut = roughCut({ parts });
    const milling = millingLoss({ cut, boards });
    const wood = parts.filter(({ material }) => material === 'wood');
    expect(cut.rough.map(({ name }) => name.replace(/ board$/, ''))).toEqual(wood.map(({ name }) => name));
    expect(milling.findings.find(({ rule }) => rule === 'every part fits a board')?.verdict).toBe('ok');
    const finished = wood.reduce((sum, p) => sum + (p.count * p.length * p.width * p.thickness) / 144, 0);
    expect(milling.steps.at(-1)?.left).toBeCloseTo(finished, 9);
  });
});

describe('what milling finds', () => {
  const [, parts] = pieces[0] as (typeof pieces)[number];
  const board: TypedBoard = { mark: 'A', thickness: '4/4', width: '8 in', length: '8 ft', price: 10 };
  const verdicts = (over: Partial<TypedBoard>, rest: Partial<MillingLossInput> = {}) => {
    const { findings } = millingLoss({
      cut: roughCut({ parts }),
      boards: readBoards([{ ...board, ...over }]),
      ...rest,
    });
    return Object.fromEntries(findings.map(({ rule, verdict }) => [rule, verdict]));
  };

  it('is in order for a straight, dry board', () => {
    const found = verdicts({ bow: '1/8 in', moisture: 8 }, { service: 8 });
    expect(Object.values(found).filter((verdict) => verdict === 'stop')).toEqual([]);
  });

  it('stops at a board too short, too narrow or too thin', () => {
    expect(verdicts({ length: '9 in' })['every part fits a board']).toBe('stop');
    expect(verdicts({ width: '5 in' })['every part fits a board']).toBe('stop');
    expect(verdicts({ thickness: '1/2 in' })['every part fits a board']).toBe('stop');
  });

  it('stops where flattening leaves a part too thin: 5/8 in from 3/4 in cupped by 1/8 in', () => {
    // 3/4 less 1/8 of cup, of which a 5 3/16 in strip of 8 keeps 0.053, less 1/16 for clean faces: 0.635; with 3/16 of cup 0.608.
    expect(verdicts({ thickness: '3/4 in', cup: '1/8 in' })['thick enough once it is flat']).toBe('watch');
    expect(verdicts({ thickness: '3/4 in', cup: '3/16 in' })['thick enough once it is flat']).toBe('stop');
  });

  it('watches a board further than 2 points from its later home, stops at one more than 5 points too wet', () => {
    const at = (moisture: number) => verdicts({ moisture }, { service: 8 })['boards as dry as their later home'];
    expect([at(7), at(10), at(10.5), at(13), at(14), at(5)]).toEqual(['ok', 'ok', 'watch', 'watch', 'stop', 'watch']);
    const asStack = (stackMoisture: number) =>
      verdicts({}, { service: 8, stackMoisture })['boards as dry as their later home'];
    expect([asStack(9), asStack(11), asStack(14)], 'unread, as the stack').toEqual(['ok', 'watch', 'stop']);
    expect(verdicts({ moisture: 14 })['boards as dry as their later home'], 'no home known').toBeUndefined();
  });

  it('loses knots and sapwood before anything is cut', () => {
    const { steps } = millingLoss({
      cut: roughCut({ parts }),
      boards: readBoards([{ ...board, sapwoodLower: '1 in', defects: ['knot at 10 by 3 size 12 by 2'] }]),
    });
    expect(steps[1]).toMatchObject({ step: 'knots and sapwood left out' });
    expect(steps[1]?.lost).toBeCloseTo((96 + 24) / 144, 9);
  });

  it('takes each part from the board that the plan puts it on', () => {
    const boards = readBoards([
      { ...board, mark: 'straight', bow: 0 },
      { ...board, mark: 'bowed', bow: '1/2 in' },
    ]);
    const small: PiecePart[] = [
      {
        name: 'side',
        count: 1,
        length: 12 - 0.75,
        width: 3.75,
        thickness: 0.5,
        material: 'wood',
        grain: 'front to back',
        note: '',
      },
    ];
    const bowed = trimmedBoards({ boards })[1] as ReturnType<typeof trimmedBoards>[number];
    const cut = roughCut({ parts: small });
    const { milled } = millingLoss({ cut, boards, plan: planOf(handMade(bowed.cut)) });
    expect(milled[0]).toMatchObject({ board: 'bowed' });
    expect(milled[0]?.bow).toBeCloseTo(0.5 / 64, 12);
    expect(millingLoss({ cut, boards }).milled[0]).toMatchObject({ board: 'straight' });
  });
});
