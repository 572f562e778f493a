import fc from 'fast-check';
import type { CutBoard, CutPart } from '../../../kernel-helpers/src/stock/cut-plan/plan.js';

const eighths = (least: number, most: number) => fc.integer({ min: least * 8, max: most * 8 }).map((each) => each / 8);

const board = fc
  .record({
    length: eighths(12, 60),
    width: eighths(4, 9),
    thickness: fc.constantFrom(0.75, 1),
    cost: fc.integer({ min: 0, max: 5000 }),
    knots: fc.array(fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true })), {
      maxLength: 3,
    }),
  })
  .map(
    ({ length, width, thickness, cost, knots }, index = 0): CutBoard => ({
      mark: `${index}`,
      length,
      width,
      thickness,
      cost,
      defects: knots.map(([along, across]) => ({
        kind: 'knot',
        fromEnd: Math.floor(along * (length - 2) * 8) / 8,
        fromEdge: Math.floor(across * (width - 1) * 8) / 8,
        length: 2,
        width: 0.75,
      })),
    }),
  );

const part = fc.record({
  length: eighths(3, 12),
  width: eighths(1, 4),
  thickness: fc.constantFrom(0.5, 0.75),
  count: fc.integer({ min: 1, max: 3 }),
});

/** Small jobs of the shop: boards with knots, parts that may need a thick one, now and then a sequence. */
export const randomJob = fc
  .record({
    boards: fc.array(board, { minLength: 2, maxLength: 4 }),
    parts: fc.array(part, { minLength: 1, maxLength: 4 }),
    firstCut: fc.constantFrom('crosscut' as const, 'rip' as const),
    kerf: fc.constantFrom(1 / 8, 3 / 32, 0.1),
    sequence: fc.boolean(),
  })
  .map(({ boards, parts, firstCut, kerf, sequence }) => ({
    boards: boards.map((each, index) => ({ ...each, mark: `board ${index + 1}` })),
    parts: parts.map(
      (each, index): CutPart => ({
        name: `part ${index + 1}`,
        ...each,
        ...(sequence && index < 2 ? { sequence: 'front and sides' } : {}),
      }),
    ),
    firstCut,
    kerf,
  }));
