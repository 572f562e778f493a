import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assembledBox, type Block, type PlacedPart } from '../../../kernel-helpers/src/piece/box/assembled-box.js';
import { type SizedBox, sizeBox } from '../../../kernel-helpers/src/piece/box/size-box.js';

const sixteenths = (least: number, most: number) => fc.integer({ min: least, max: most }).map((marks) => marks / 16);
const boxes = fc
  .record({
    insideLength: sixteenths(32, 500),
    insideWidth: sixteenths(32, 300),
    insideDepth: sixteenths(16, 200),
    species: fc.constantFrom('walnut-black', 'cherry-black'),
    stockThickness: sixteenths(8, 16),
    proud: sixteenths(0, 4),
    foot: sixteenths(0, 16),
    lidThickness: sixteenths(5, 16),
    tongueThickness: sixteenths(1, 4),
    lidGrooveDepth: sixteenths(2, 7),
    bottomGrooveDepth: sixteenths(2, 7),
    bottom: fc.constantFrom('plywood' as const, 'solid' as const),
  })
  .map(sizeBox);

const common = (a: Block, b: Block): Block => ({
  from: [0, 1, 2].map((way) => Math.max(a.from[way] as number, b.from[way] as number)) as unknown as Block['from'],
  to: [0, 1, 2].map((way) => Math.min(a.to[way] as number, b.to[way] as number)) as unknown as Block['to'],
});
const volume = ({ from, to }: Block) =>
  [0, 1, 2].reduce((product, way) => product * Math.max(0, (to[way] as number) - (from[way] as number)), 1);

/** Wood of both parts in one place, what their grooves take away left out. */
function clash(a: PlacedPart, b: PlacedPart): number {
  return a.blocks
    .flatMap((one) => b.blocks.map((other) => common(one, other)))
    .reduce((sum, both) => {
      const cleared = [...a.grooves, ...b.grooves].map((groove) => volume(common(both, groove)));
      return sum + Math.max(0, volume(both) - Math.max(0, ...cleared));
    }, 0);
}

const isBoard = ({ part }: PlacedPart) => part === 'side' || part === 'front' || part === 'back';
const name = ({ part, which }: PlacedPart) => (which ? `${which} ${part}` : part);

describe('the parts of a glued box', () => {
  it('no panel and no lid stands in the wood of a board', () => {
    fc.assert(
      fc.property(boxes, (box) => {
        const parts = assembledBox(box);
        for (const panel of parts.filter((part) => !isBoard(part)))
          for (const other of parts.filter((part) => part !== panel))
            expect(clash(panel, other), `${name(panel)} and ${name(other)}`).toBeCloseTo(0, 9);
      }),
    );
  });

  it('boards meet only where the joint shares out the corner', () => {
    fc.assert(
      fc.property(boxes, (box) => {
        const boards = assembledBox(box).filter(isBoard);
        boards.forEach((board, index) => {
          for (const other of boards.slice(index + 1)) {
            const [a, b] = [board.blocks[0] as Block, other.blocks[0] as Block];
            const height = Math.min(a.to[2], b.to[2]);
            const corner = board.part === 'side' && other.part !== 'side' ? box.design.stockThickness ** 2 * height : 0;
            expect(volume(common(a, b)), `${name(board)} and ${name(other)}`).toBeCloseTo(corner, 9);
          }
        });
      }),
    );
  });

  it('closes on every side: boards end where the inside begins, lid and bottom reach into every groove', () => {
    fc.assert(
      fc.property(boxes, (box) => {
        // A bottom too wide for its grooves is a stop of its own.
        fc.pre(
          !box.findings.some(({ rule, verdict }) => rule === 'solid bottom held by its grooves' && verdict === 'stop'),
        );
        const parts = assembledBox(box);
        const block = (wanted: string, at = 0) => parts.find((part) => name(part) === wanted)?.blocks[at] as Block;
        const { design } = box;
        expect(block('front').to[0]).toBe(0);
        expect(block('back').from[0]).toBe(design.insideLength);
        expect(block('left side').to[1]).toBe(0);
        expect(block('right side').from[1]).toBe(design.insideWidth);
        // The lid lies on the front and ends flush with the sides' top and the front's face.
        expect(block('lid').from[2]).toBe(block('front').to[2]);
        expect(block('lid', 1).to[2]).toBeCloseTo(block('back').to[2], 9);
        expect(block('lid').from[0]).toBe(block('front').from[0]);
        for (const panel of ['lid', 'bottom']) {
          expect(block(panel).from[1], panel).toBeLessThan(0);
          expect(block(panel).to[1], panel).toBeGreaterThan(design.insideWidth);
          expect(block(panel).to[0], panel).toBeGreaterThan(design.insideLength);
        }
        expect(block('bottom').to[2] + design.insideDepth).toBeCloseTo(block('lid').from[2], 9);
      }),
    );
  });

  it('fills a groove up to the play that was asked for', () => {
    const box: SizedBox = sizeBox({
      insideLength: '9 1/2 in',
      insideWidth: '6 1/4 in',
      insideDepth: '4 in',
      species: 'walnut-black',
    });
    const parts = assembledBox(box);
    const [left, right] = parts.filter(({ part }) => part === 'side');
    const between = (at: number) => (right?.grooves[at]?.to[1] as number) - (left?.grooves[at]?.from[1] as number);
    const panel = (part: string) => parts.find((placed) => placed.part === part)?.blocks[0] as Block;
    const width = ({ from, to }: Block) => to[1] - from[1];
    expect(between(0) - width(panel('bottom'))).toBeCloseTo(3 / 64, 9);
    expect(between(1) - width(panel('lid'))).toBeCloseTo(1 / 16, 9); // 1/32 each side
  });

  it('finds a lid that is too wide', () => {
    const box = sizeBox({ insideLength: 9, insideWidth: 6, insideDepth: 4, species: 'walnut-black' });
    const wide = { ...box, parts: box.parts.map((part) => (part.name === 'lid' ? { ...part, width: 7 } : part)) };
    const parts = assembledBox(wide);
    const lid = parts.find(({ part }) => part === 'lid') as PlacedPart;
    expect(clash(lid, parts[0] as PlacedPart)).toBeGreaterThan(0);
  });
});
