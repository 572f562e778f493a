import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutPlanDrawing } from '../../../kernel-helpers/src/show/drawing/cut-plan-drawing.js';
import { cutTable, partTable } from '../../../kernel-helpers/src/show/tables/cut-plan-tables.js';
import { partLabels } from '../../../kernel-helpers/src/show/tables/part-labels.js';
import { readBoards } from '../../../kernel-helpers/src/stock/boards/boards.js';
import { boardLayouts } from '../../../kernel-helpers/src/stock/cutting/board-layouts.js';
import { trimmedBoards } from '../../../kernel-helpers/src/stock/milling/trimmed-boards.js';
import { handMade, kerf, planOf, sawnAtRandom } from '../../stock/hand-made-plan.js';
import { drawingOf } from '../drawing-text.js';
import { elementsOf } from '../read-html.js';
import { cutOff, overlaps } from '../read-svg.js';

const boards = trimmedBoards({
  boards: readBoards([
    {
      ...{ mark: 'A', thickness: '4/4', width: '8 in', length: '4 ft', price: 10, sapwoodUpper: '1/2 in' },
      defects: ['knot at 20 by 2 size 2 by 1'],
    },
  ]),
});
const layouts = boardLayouts({ plan: planOf(...boards.map(({ cut }) => handMade(cut))), boards, kerf });

describe('the drawing of a cut plan', () => {
  it('names parts with their sizes and numbers the cuts', () => {
    const texts = drawingOf(cutPlanDrawing(layouts)).labels.map(({ text }) => text);
    for (const text of ['Board A: 48 in x 8 in x 1 in', '1 side', '12 in x 4 in', '2 rail', '1', '2', '3', '4'])
      expect(texts).toContain(text);
    expect(texts.some((text) => text.startsWith('keep 35 7/8 in x 7 1/2 in'))).toBe(true);
  });

  it('draws each part to the scale of its board, from its marked end', () => {
    const { all, number } = drawingOf(cutPlanDrawing(layouts));
    const rects = all('g rect').map((each) => ({
      ...{ x: number(each, 'x'), y: number(each, 'y'), width: number(each, 'width'), height: number(each, 'height') },
      fill: each.getAttribute('fill'),
    }));
    const scale = (rects[0]?.width as number) / 48;
    const parts = rects.filter(({ fill, width }) => fill === '#fff' && Math.abs(width - 12 * scale) < 0.01);
    expect(parts.map(({ height }) => Math.round((height / scale) * 100) / 100)).toEqual([4, 1.5]);
    // The lower edge of the board is at the foot: the side lies on it.
    expect(parts[0]?.y).toBeCloseTo(8 * scale - 4 * scale, 2);
  });

  it('says all of it in words too', () => {
    const alt = elementsOf(cutPlanDrawing(layouts).text, 'img')[0]?.getAttribute('alt') ?? '';
    expect(alt).toContain(
      'Board A, 48 in by 8 in, 4 cuts: 1 side 12 in by 4 in, 0 in from the end and 0 in from the edge',
    );
    expect(alt).toContain('Offcuts kept: 35 7/8 in by 7 1/2 in');
  });

  it('never lets a label cover another or run off the edge, and leaves no part or cut without its number', () => {
    fc.assert(
      fc.property(sawnAtRandom, fc.constantFrom('tape' as const, 'mm' as const, 'both' as const), (sawn, lengths) => {
        const [whole] = trimmedBoards({ boards: [{ ...sawn.board, price: 1 }] });
        const made = boardLayouts({ plan: planOf(sawn), boards: [whole as NonNullable<typeof whole>], kerf });
        const drawing = drawingOf(cutPlanDrawing(made, { lengths }));
        expect(overlaps(drawing.labels)).toEqual([]);
        expect(cutOff(drawing.labels, drawing)).toEqual([]);
        const numbers = drawing.labels.map(({ text }) => text.split(' ')[0]);
        const wanted = [...sawn.cuts.map((_, i) => `${i + 1}`), ...sawn.parts.map((_, i) => `${i + 1}`)];
        for (const number of new Set(wanted))
          expect(numbers.filter((each) => each === number).length).toBeGreaterThanOrEqual(
            wanted.filter((each) => each === number).length,
          );
      }),
      { numRuns: 150 },
    );
  });
});

describe('the papers of a cut plan', () => {
  it('list every part and every cut once', () => {
    expect(elementsOf(partTable(layouts).text, 'tbody tr')).toHaveLength(2);
    expect(elementsOf(cutTable(layouts).text, 'tbody tr')).toHaveLength(4);
  });

  it('label every part, whatever it is called', () => {
    const hostile = layouts.map((layout) => ({
      ...layout,
      parts: layout.parts.map((part) => ({ ...part, name: '<script>alert(1)</script>' })),
    }));
    const text = partLabels(hostile, { rough: [], toCut: { partOf: {} } });
    expect(elementsOf(text, 'li')).toHaveLength(2);
    expect(elementsOf(text, 'script')).toHaveLength(0);
  });
});
