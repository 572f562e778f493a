import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layOutDovetails } from '../../../kernel-helpers/src/joints/dovetails.js';
import { grooveRuns } from '../../../kernel-helpers/src/joints/groove-runs.js';
import { sizeBox } from '../../../kernel-helpers/src/piece/box/size-box.js';
import { grooveDrawing } from '../../../kernel-helpers/src/show/drawing/groove-drawing.js';
import { drawingOf, hiddenArrowheads, linesThrough } from '../drawing-text.js';
import { elementsOf } from '../read-html.js';
import { cutOff, overlaps } from '../read-svg.js';

function grooved(size: { insideLength: number; insideWidth: number; insideDepth: number }, halfPin: number) {
  const box = sizeBox({ ...size, species: 'walnut-black', proud: '1/8 in' });
  const boards = { boardWidth: box.overall.height, stockThickness: '5/8 in', proud: '1/8 in' };
  const layout = layOutDovetails({ ...boards, tails: 1, pinWidth: '1/8 in', halfPin, slope: 8 });
  return { box, runs: grooveRuns({ box, joints: { layout, firstBoards: 'front and back' } }) };
}

const inches = (least: number, most: number) =>
  fc.integer({ min: least * 16, max: most * 16 }).map((sixteenths) => sixteenths / 16);

/** The drawing of each board. */
function drawnBoards(...given: Parameters<typeof grooveDrawing>) {
  const { mime, text } = grooveDrawing(...given);
  return text
    .split('</figure>')
    .slice(0, -1)
    .map((figure) => drawingOf({ mime, text: `${figure}</figure>` }));
}

describe('the drawing of the grooves', () => {
  const { box, runs } = grooved({ insideLength: 9.5, insideWidth: 6.25, insideDepth: 4 }, 0.5);

  it('shows where a groove stops, from the end of its board', () => {
    const texts = drawnBoards(box, runs).flatMap(({ labels }) => labels.map(({ text }) => text));
    // Stopped 3/4 - 1/4 short of each end; 1/4 of foot; 13/64 of bottom; 4 clear.
    for (const size of ['1/2 in', '1/4 in', '13/64 in', '4 in', '11 in', '7 3/4 in']) expect(texts).toContain(size);
  });

  it('has one system of lengths beside its lines, the tape where both are asked for', () => {
    const sizes = (lengths: 'both' | 'mm') =>
      drawnBoards(box, runs, { lengths }).flatMap(({ labels }) => labels.map(({ text }) => text));
    expect(sizes('both')).toContain('13/64 in');
    expect(sizes('both').join()).not.toContain('mm');
    expect(sizes('mm')).toContain('5.3 mm');
  });

  it('says each reason in words', () => {
    const drawing = grooveDrawing(box, runs);
    const words = elementsOf(drawing.text, 'figcaption')
      .map(({ textContent }) => textContent)
      .join(' ');
    const alt = elementsOf(drawing.text, 'img')
      .map((image) => image.getAttribute('alt'))
      .join(' ');
    for (const { why } of runs) {
      expect(words).toContain(why);
      expect(alt).toContain(why);
    }
  });

  it('draws each groove between its ends', () => {
    const areas = drawnBoards(box, runs)
      .flatMap(({ all }) => all('polygon[stroke]'))
      .map((each) => {
        const corners = (each.getAttribute('points') ?? '').split(' ').map((point) => point.split(',').map(Number));
        const [left, right] = [corners[0]?.[0] as number, corners[1]?.[0] as number];
        return { left, right, board: each.getAttribute('fill') === 'none' };
      });
    let waiting: typeof areas = [];
    const drawn: number[][] = [];
    for (const area of areas) {
      if (!area.board) waiting.push(area);
      else {
        const { length = 0 } = box.parts.find(({ name }) => name === ['side', 'front', 'back'][drawn.length]) ?? {};
        const scale = (area.right - area.left) / length;
        drawn.push(waiting.flatMap(({ left, right }) => [(left - area.left) / scale, (right - area.left) / scale]));
        waiting = [];
      }
    }
    const expected = ['side', 'front', 'back'].map((board) =>
      runs.filter((run) => run.board === board).flatMap(({ from, to }) => [from, to]),
    );
    expect(drawn.map((ends) => ends.map((end) => Math.round(end * 100) / 100))).toEqual(expected);
  });

  it('never lets a label cover another or run off the edge', () => {
    fc.assert(
      fc.property(
        fc.record({ insideLength: inches(1, 36), insideWidth: inches(1, 24), insideDepth: inches(1, 18) }),
        inches(0.125, 0.5),
        fc.constantFrom('tape' as const, 'mm' as const, 'both' as const),
        (size, halfPin, lengths) => {
          const made = grooved(size, halfPin);
          for (const drawing of drawnBoards(made.box, made.runs, { lengths })) {
            expect(overlaps(drawing.labels)).toEqual([]);
            expect(linesThrough(drawing)).toEqual([]);
            expect(hiddenArrowheads(drawing)).toEqual([]);
            expect(cutOff(drawing.labels, drawing)).toEqual([]);
          }
        },
      ),
      { numRuns: 60 },
    );
  });
});
