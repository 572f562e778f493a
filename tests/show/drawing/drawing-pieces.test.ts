import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sizeBookcase } from '../../../kernel-helpers/src/piece/bookcase/bookcase.js';
import { drawnBookcase } from '../../../kernel-helpers/src/piece/bookcase/drawn-bookcase.js';
import { sizeDrawer } from '../../../kernel-helpers/src/piece/drawer/drawer.js';
import { drawnDrawer } from '../../../kernel-helpers/src/piece/drawer/drawn-drawer.js';
import type { DrawnPiece } from '../../../kernel-helpers/src/piece/drawn-piece.js';
import { drawnFrameAndPanel } from '../../../kernel-helpers/src/piece/frame-and-panel/drawn-frame-and-panel.js';
import { sizeFrameAndPanel } from '../../../kernel-helpers/src/piece/frame-and-panel/frame-and-panel.js';
import { drawnSolidTop } from '../../../kernel-helpers/src/piece/solid-top/drawn-solid-top.js';
import { sizeSolidTop } from '../../../kernel-helpers/src/piece/solid-top/solid-top.js';
import { explodedView } from '../../../kernel-helpers/src/show/drawing/exploded-view.js';
import { projected } from '../../../kernel-helpers/src/show/drawing/kit/projection.js';
import { pieceDrawing } from '../../../kernel-helpers/src/show/drawing/piece-drawing.js';
import { storyStick } from '../../../kernel-helpers/src/show/drawing/story-stick.js';
import { svgFile } from '../../../kernel-helpers/src/show/kit/svg-file.js';
import { cherry } from '../../piece/box/cherry.js';
import { drawingOf, hiddenArrowheads, linesThrough } from '../drawing-text.js';
import { cutOff, overlaps } from '../read-svg.js';

const inches = (least: number, most: number) => fc.integer({ min: least * 16, max: most * 16 }).map((n) => n / 16);

const pieces: [string, fc.Arbitrary<DrawnPiece>, string[]][] = [
  [
    'bookcase',
    fc
      .record({
        species: fc.constant('cherry-black'),
        width: inches(8, 96),
        height: inches(24, 120),
        depth: inches(4, 36),
        shelves: fc.integer({ min: 1, max: 9 }),
        plinth: inches(0, 5),
      })
      .map((design) => drawnBookcase(sizeBookcase(design))),
    ['back', 'bottom', 'left side', 'right side', 'shelf', 'top'],
  ],
  [
    'drawer',
    fc
      .record({ opening: inches(2, 20), openingWidth: inches(4, 60), openingDepth: inches(4, 60) })
      .map((design) => drawnDrawer(sizeDrawer({ ...cherry, ...design }))),
    ['back', 'bottom', 'front', 'left side', 'right side'],
  ],
  [
    'solid top',
    fc
      .record({ length: inches(8, 144), width: inches(6, 60), widestBoard: inches(2, 12) })
      .map((design) => drawnSolidTop(sizeSolidTop({ ...cherry, ...design }))),
    ['board'],
  ],
  [
    'frame and panel',
    fc
      .record({ width: inches(5, 60), height: inches(5, 120), thickness: inches(0.5, 3) })
      .map((design) => drawnFrameAndPanel(sizeFrameAndPanel({ ...cherry, ...design }))),
    ['bottom rail', 'left stile', 'panel', 'right stile', 'top rail'],
  ],
];

describe.each(pieces)('a %s, long and thin, flat or small', (_, examples, names) => {
  it('is drawn to scale with no label over another or off the edge', () => {
    fc.assert(
      fc.property(examples, fc.constantFrom('tape' as const, 'mm' as const, 'both' as const), (piece, lengths) => {
        const picture = drawingOf(pieceDrawing(piece, { lengths }));
        expect(overlaps(picture.labels)).toEqual([]);
        expect(linesThrough(picture)).toEqual([]);
        expect(hiddenArrowheads(picture)).toEqual([]);
        expect(cutOff(picture.labels, picture)).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });

  it('taken apart names every kind of part once, no label over another', () => {
    fc.assert(
      fc.property(examples, (piece) => {
        const picture = drawingOf(explodedView(piece));
        expect(picture.labels.map(({ text }) => text).sort()).toEqual(names);
        expect(overlaps(picture.labels)).toEqual([]);
        expect(linesThrough(picture)).toEqual([]);
        expect(hiddenArrowheads(picture)).toEqual([]);
        expect(cutOff(picture.labels, picture)).toEqual([]);
      }),
      { numRuns: 20 },
    );
  });
});

const bookcase = drawnBookcase(
  sizeBookcase({ species: 'cherry-black', width: '30 in', height: '48 in', depth: '11 in', shelves: 3 }),
);

it('the drawing of a bookcase gives the sizes a maker measures', () => {
  const texts = drawingOf(pieceDrawing(bookcase)).labels.map(({ text }) => text);
  expect(texts.sort()).toEqual(
    ['Plan', 'Front', 'Right side', '30 in', '11 in', '11 in', '48 in']
      .concat(['inside 28 1/2 in', 'clear 10 9/16 in', 'plinth 2 in', 'shelf 10 3/4 in'])
      .sort(),
  );
});

it("shows a shelf's ends in their dadoes from the front and dashes the shelf behind the side", () => {
  const heights = (type: string, view: 'front' | 'right side') =>
    projected(bookcase.solids, view)
      .filter((shape) => shape.type === type && shape.points.every(([, up]) => Math.abs(up - 13.3125) < 1e-9))
      .map(({ points }) => points.map(([across]) => across));
  expect(heights('outline', 'front')).toEqual([[0.5, 29.5]]);
  expect(heights('hidden', 'right side')).toEqual([[0, 10.75]]);
  expect(heights('outline', 'right side')).toEqual([]);
});

it('the story stick of a bookcase marks every dado, those of both sides as one', () => {
  const stick = storyStick(bookcase);
  for (const mark of [
    '2 in: bottom, back',
    '13 5/16 in: shelf',
    '14 1/16 in: shelf',
    '47 1/4 in: top',
    '48 in: side, top',
  ])
    expect(stick).toContain(`>${mark}<`);
});

describe('a drawing as a file of its own', () => {
  it('is an SVG that loads nothing, the same each time', () => {
    const text = svgFile(pieceDrawing(bookcase));
    expect(text).toMatch(
      /^<\?xml version="1\.0" encoding="UTF-8"\?>\n<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg"[\s\S]*<\/svg>\n$/,
    );
    expect(text).not.toMatch(/href|url\(/);
    expect(text).toContain('clear 10 9/16 in');
    expect(svgFile(pieceDrawing(bookcase))).toBe(text);
  });

  it('says so when there is no picture', () => {
    expect(() => svgFile({ mime: 'text/markdown', text: 'words' })).toThrow('there is no picture in this');
  });
});
