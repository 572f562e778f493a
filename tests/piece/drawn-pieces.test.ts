import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sizeBookcase } from '../../kernel-helpers/src/piece/bookcase/bookcase.js';
import { drawnBookcase } from '../../kernel-helpers/src/piece/bookcase/drawn-bookcase.js';
import { drawnBox } from '../../kernel-helpers/src/piece/box/drawn-box.js';
import { sizeBox } from '../../kernel-helpers/src/piece/box/size-box.js';
import { sizeDrawer } from '../../kernel-helpers/src/piece/drawer/drawer.js';
import { drawnDrawer } from '../../kernel-helpers/src/piece/drawer/drawn-drawer.js';
import { type DrawnPiece, extent, type Solid, type SolidBlock } from '../../kernel-helpers/src/piece/drawn-piece.js';
import { drawnFrameAndPanel } from '../../kernel-helpers/src/piece/frame-and-panel/drawn-frame-and-panel.js';
import { sizeFrameAndPanel } from '../../kernel-helpers/src/piece/frame-and-panel/frame-and-panel.js';
import type { SizedPiece } from '../../kernel-helpers/src/piece/piece.js';
import { drawnSolidTop } from '../../kernel-helpers/src/piece/solid-top/drawn-solid-top.js';
import { sizeSolidTop } from '../../kernel-helpers/src/piece/solid-top/solid-top.js';
import { yearOfAir } from '../../kernel-helpers/src/wood/air/air.js';
import { cherry } from './box/cherry.js';

const sixteenths = (least: number, most: number) =>
  fc.integer({ min: least * 16, max: most * 16 }).map((marks) => marks / 16);

const air = yearOfAir({ place: 'chicago-ohare', heating: { heatTo: 20, coolTo: 25 } });
const boxes = fc
  .record({
    insideLength: sixteenths(2, 31),
    insideWidth: sixteenths(2, 18),
    insideDepth: sixteenths(1, 12),
    species: fc.constantFrom('walnut-black', 'cherry-black'),
    stockThickness: sixteenths(0.5, 1),
    proud: sixteenths(0, 0.25),
    foot: sixteenths(0, 1),
    lidThickness: sixteenths(0.3125, 1),
    tongueThickness: sixteenths(0.0625, 0.25),
    lidGrooveDepth: sixteenths(0.125, 0.4375),
    bottomGrooveDepth: sixteenths(0.125, 0.4375),
    bottom: fc.constantFrom('plywood' as const, 'solid' as const),
  })
  .map((brief) => sizeBox({ ...brief, air }));
const bookcases = fc
  .record({
    species: fc.constant('cherry-black'),
    width: sixteenths(10, 60),
    height: sixteenths(24, 96),
    depth: sixteenths(6, 20),
    shelves: fc.integer({ min: 0, max: 6 }),
    thickness: sixteenths(0.625, 1.5),
    plinth: sixteenths(0, 6),
    dadoDepth: sixteenths(0.125, 0.5),
    backThickness: sixteenths(0.125, 0.5),
    backRabbet: sixteenths(0.125, 0.5),
  })
  // An inch or more between shelves.
  .filter(({ height, plinth, shelves, thickness }) => height - plinth - (shelves + 2) * thickness >= shelves + 1)
  .map((design) => sizeBookcase(design));
const drawers = fc
  .record({
    opening: sixteenths(2, 14),
    openingWidth: sixteenths(6, 40),
    openingDepth: sixteenths(8, 30),
    sideThickness: sixteenths(0.375, 0.75),
    frontThickness: sixteenths(0.625, 1.25),
    lap: sixteenths(0.125, 0.5),
    bottomGrooveDepth: sixteenths(0.125, 0.375),
  })
  .map((design) => sizeDrawer({ ...cherry, ...design }));
const tops = fc
  .record({ length: sixteenths(12, 96), width: sixteenths(8, 48), widestBoard: sixteenths(3, 12) })
  .map((design) => sizeSolidTop({ ...cherry, ...design }));
const frames = fc
  .record({
    width: sixteenths(8, 40),
    height: sixteenths(8, 60),
    thickness: sixteenths(0.625, 1.25),
    railWidth: sixteenths(1, 3),
    grooveDepth: sixteenths(0.25, 0.5),
    tenonLength: sixteenths(0.625, 2),
  })
  .map((design) => sizeFrameAndPanel({ ...cherry, ...design }));

const common = (a: SolidBlock, b: SolidBlock): SolidBlock => ({
  x: [Math.max(a.x[0], b.x[0]), Math.min(a.x[1], b.x[1])],
  y: [Math.max(a.y[0], b.y[0]), Math.min(a.y[1], b.y[1])],
  z: [Math.max(a.z[0], b.z[0]), Math.min(a.z[1], b.z[1])],
});
const volume = ({ x, y, z }: SolidBlock) => [x, y, z].reduce((all, [from, to]) => all * Math.max(0, to - from), 1);
const sum = (values: number[]) => values.reduce((all, value) => all + value, 0);
/** Wood of a block: it, less its cuts, which do not overlap one another. */
const wood = (solid: Solid) => volume(solid) - sum((solid.cuts ?? []).map((cut) => volume(common(solid, cut))));

/** Wood of two blocks in one place. */
function clash(a: Solid, b: Solid): number {
  const both = common(a, b);
  const cleared = [...(a.cuts ?? []), ...(b.cuts ?? [])].map((cut) => volume(common(both, cut)));
  return Math.max(0, volume(both) - sum(cleared));
}

/** All of what is cut out of a piece that nothing fills. */
function unfilled({ solids }: DrawnPiece): number {
  const cuts = solids.flatMap((solid) => (solid.cuts ?? []).map((cut) => ({ cut, solid })));
  return sum(
    cuts.map(({ cut, solid }) => {
      const others = solids.filter((other) => other !== solid);
      const filled = others.map((other) => {
        const inIt = common(other, cut);
        return volume(inIt) - sum((other.cuts ?? []).map((own) => volume(common(own, inIt))));
      });
      return volume(cut) - sum(filled);
    }),
  );
}

const pieces: [string, fc.Arbitrary<{ sized: SizedPiece; drawn: DrawnPiece }>][] = [
  ['box', boxes.map((sized) => ({ sized, drawn: drawnBox(sized) }))],
  ['bookcase', bookcases.map((sized) => ({ sized, drawn: drawnBookcase(sized) }))],
  ['drawer', drawers.map((sized) => ({ sized, drawn: drawnDrawer(sized) }))],
  ['solid top', tops.map((sized) => ({ sized, drawn: drawnSolidTop(sized) }))],
  ['frame and panel', frames.map((sized) => ({ sized, drawn: drawnFrameAndPanel(sized) }))],
];

describe.each(pieces)('a %s put together', (_, examples) => {
  it('has no part in the wood of another', () => {
    fc.assert(
      fc.property(examples, ({ drawn: { solids } }) => {
        solids.forEach((one, index) => {
          for (const other of solids.slice(index + 1))
            expect(clash(one, other), `${one.part} and ${other.part}`).toBeCloseTo(0, 9);
        });
      }),
    );
  });

  it('is as large over everything as it was sized', () => {
    fc.assert(
      fc.property(examples, ({ sized, drawn }) => {
        const { x, y, z } = extent(drawn.solids);
        const reached = [x, y, z].map(([from, to]) => to - from).sort((a, b) => a - b);
        const { length, width, height } = sized.overall;
        [length, width, height]
          .sort((a, b) => a - b)
          .forEach((size, index) => {
            expect(reached[index]).toBeCloseTo(size, 9);
          });
      }),
    );
  });
});

it('a bookcase leaves no dado or rabbet open', () => {
  fc.assert(
    fc.property(bookcases, (bookcase) => {
      expect(unfilled(drawnBookcase(bookcase))).toBeCloseTo(0, 9);
    }),
  );
});

it('a bookcase and a solid top hold as much wood as their parts', () => {
  fc.assert(
    fc.property(bookcases, tops, (bookcase, top) => {
      const cut = (piece: DrawnPiece) => sum(piece.solids.map((solid) => volume(solid) - wood(solid)));
      for (const [sized, drawn] of [
        [bookcase, drawnBookcase(bookcase)],
        [top, drawnSolidTop(top)],
      ] as const) {
        const parts = sum(sized.parts.map(({ count, length, width, thickness }) => count * length * width * thickness));
        expect(sum(drawn.solids.map(wood)) + cut(drawn)).toBeCloseTo(parts, 6);
      }
    }),
  );
});

it('a drawer leaves of its grooves only the play of its bottom, sideways', () => {
  fc.assert(
    fc.property(drawers, (drawer) => {
      const { bottomClearance, bottomThickness, lap, frontThickness, bottomGrooveDepth } = drawer.design;
      const from = Math.max(lap, frontThickness - bottomGrooveDepth);
      const intoLap = Math.max(0, lap - (frontThickness - bottomGrooveDepth));
      const play = bottomClearance * bottomThickness * (drawer.overall.length - from + intoLap);
      expect(unfilled(drawnDrawer(drawer))).toBeCloseTo(play, 9);
    }),
  );
});

it("a frame's panel reaches into all four grooves, and never to their floors", () => {
  fc.assert(
    fc.property(frames, (frame) => {
      const { stileWidth, railWidth, grooveDepth, width, height } = frame.design;
      const panel = drawnFrameAndPanel(frame).solids.find(({ part }) => part === 'panel') as Solid;
      expect(panel.x[0]).toBeLessThan(stileWidth);
      expect(panel.x[0]).toBeGreaterThan(stileWidth - grooveDepth);
      expect(panel.x[1]).toBeGreaterThan(width - stileWidth);
      expect(panel.z[0]).toBeLessThan(railWidth);
      expect(panel.z[0]).toBeGreaterThan(railWidth - grooveDepth);
      expect(panel.z[1]).toBeGreaterThan(height - railWidth);
    }),
  );
});

it('a box leaves of its grooves only the play of its bottom and its lid', () => {
  const box = sizeBox({ insideLength: 9.5, insideWidth: 6.25, insideDepth: 4, species: 'walnut-black', proud: 1 / 8 });
  const [bottom, tongue] = [13 / 64, 1 / 4]; // heights of the grooves, each 1/4 deep
  // Bottom: 3/64 of play both ways in 10 by 6 3/4; its grooves are cut out of the corners once.
  const around = 10 * 6.75 - (10 - 3 / 64) * (6.75 - 3 / 64);
  // Lid: 1/32 at each side and at its back end; the tongue ends at the front's face, the grooves an eighth further out.
  const beside = (2 / 32) * (9.5 + 5 / 8 + 1 / 4 - 1 / 32) + 6.75 / 32 + (2 / 4) * (1 / 8);
  expect(unfilled(drawnBox(box))).toBeCloseTo(around * bottom + beside * tongue, 9);
});

it('closes a box: lid and bottom reach into every groove, the lid lies on the front and ends flush with it and the sides', () => {
  fc.assert(
    fc.property(boxes, (box) => {
      // A bottom too wide for its grooves is a stop of its own.
      fc.pre(!box.findings.some(({ rule, verdict }) => /^bottom: /.test(rule) && verdict === 'stop'));
      const { solids } = drawnBox(box);
      const of = (part: string) => solids.filter((solid) => solid.part === part);
      const first = (part: string) => of(part)[0] as Solid;
      const [front, back, left, right] = ['front', 'back', 'left side', 'right side'].map(first) as [
        Solid,
        Solid,
        Solid,
        Solid,
      ];
      expect([right.x[0] - left.x[1], back.y[0] - front.y[1]]).toEqual([
        expect.closeTo(box.design.insideWidth, 9),
        expect.closeTo(box.design.insideLength, 9),
      ]);
      const lid = extent(of('lid'));
      expect(lid.z).toEqual([front.z[1], back.z[1]]);
      expect(lid.y[0]).toBe(front.y[0]);
      for (const panel of [lid, first('bottom')]) {
        expect(panel.x[0]).toBeLessThan(left.x[1]);
        expect(panel.x[1]).toBeGreaterThan(right.x[0]);
        expect(panel.y[1]).toBeGreaterThan(back.y[0]);
      }
      expect(first('bottom').z[1] + box.design.insideDepth).toBeCloseTo(lid.z[0], 9);
    }),
  );
});

it('tells a lid that is too wide', () => {
  const box = sizeBox({ insideLength: 9, insideWidth: 6, insideDepth: 4, species: 'walnut-black' });
  const parts = box.parts.map((part) => (part.name === 'lid' ? { ...part, width: 7 } : part));
  const { solids } = drawnBox({ ...box, parts });
  expect(clash(solids.at(-1) as Solid, solids[0] as Solid)).toBeGreaterThan(0);
});

it('tells a shelf that is longer than its dadoes allow', () => {
  const bookcase = sizeBookcase({ species: 'cherry-black', width: 30, height: 48, depth: 11, shelves: 2 });
  const { solids } = drawnBookcase(bookcase);
  const shelf = solids.find(({ part }) => part === 'shelf') as Solid;
  const long = { ...shelf, x: [shelf.x[0] - 1 / 8, shelf.x[1]] as const };
  expect(clash(long, solids[0] as Solid)).toBeGreaterThan(0);
});
