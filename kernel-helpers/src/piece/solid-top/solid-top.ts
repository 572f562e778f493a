import * as z from 'zod';
import { type FastenerTravel, fastenerTravel, type MovingPiece } from '../../fit/panel-fits.js';
import { count, oneOf, readParameters, size } from '../../measure/parameters.js';
import { ShopError } from '../../measure/shop-error.js';
import { judge, tape } from '../../measure/verdict.js';
import { noCounts, type SizedPiece } from '../piece.js';

/** All that decides a solid top. Inches. */
export interface SolidTopDesign {
  length: number;
  width: number;
  thickness: number;
  boards: number;
  widestBoard: number;
  inset: number;
  fixed: 'middle' | 'edge';
}

/** A glued-up top on a frame that does not move. Inches. */
export interface SolidTop extends SizedPiece {
  design: SolidTopDesign;
  /** What its farthest fastener needs, from the line where it is fixed. */
  travel: FastenerTravel;
}

const fields = z.strictObject({
  length: size({ least: 4, most: 144, why: 'length of the top, along its grain' }),
  width: size({ least: 4, most: 72, why: 'width of the top, across its grain' }),
  thickness: size({ least: 0.375, most: 4, why: 'thickness of the top' }).default(7 / 8),
  boards: count({ least: 1, most: 40, what: 'boards' }).optional(),
  widestBoard: size({ least: 1, most: 36, why: 'widest board there is' }).default(6),
  inset: size({ least: 0, most: 36, why: 'from the edge of the top to its outer fasteners' }).default(2),
  fixed: oneOf(['middle', 'edge'], 'the line along which the top is screwed fast').default('middle'),
});

/**
 * Sizes a solid top glued up from boards, and the slots of its fasteners.
 *
 *   board = width / boards          farthest fastener = width - inset from a fixed edge, half the width - inset from a fixed middle
 *
 * @param top.boards  how many; as many as the widest board asks for unless told otherwise
 * @param top.fixed  where it is screwed fast: along its `middle`, which is what it is unless told otherwise, or its `edge`
 * @param top.slot  length of the slots you have, to be judged
 * @returns boards, overall, travel, findings; in
 * @throws ShopError  one line: the field, the value given, the nearest that is possible, why
 * @see common practice, no source; travel: {@link fastenerTravel}
 */
export function sizeSolidTop(
  top: MovingPiece & {
    length: number | string;
    width: number | string;
    thickness?: number | string;
    boards?: number;
    widestBoard?: number | string;
    inset?: number | string;
    fixed?: SolidTopDesign['fixed'] | string;
    screw?: number | string;
    slot?: number | string;
  },
): SolidTop {
  const { species, ringAngle, fittingMoisture, air, moistures, screw, slot, ...typed } = top;
  const read = readParameters(fields, typed);
  const { length, width, thickness, widestBoard, inset, fixed } = read;
  const needed = Math.ceil(width / widestBoard - 1e-9);
  const { boards = needed } = read;
  if (boards < needed)
    throw new ShopError(
      `boards: ${boards} given; possible: at least ${needed} with boards up to ${tape(widestBoard)} for a top ${tape(width)} wide`,
    );
  const half = fixed === 'middle' ? width / 2 : width;
  if (inset > half - 1 / 2)
    throw new ShopError(
      `inset: ${tape(inset)} given; possible: up to ${tape(half - 1 / 2)} on a top ${tape(width)} wide`,
    );
  const travel = fastenerTravel({
    ...{ species, ringAngle, fittingMoisture, air, fromFixed: half - inset },
    ...(moistures ? { moistures } : {}),
    ...(screw === undefined ? {} : { screw }),
    ...(slot === undefined ? {} : { slot }),
  });
  const board = width / boards;
  return {
    kind: 'solid-top',
    design: { ...read, boards },
    parts: [
      {
        name: 'top',
        count: 1,
        length,
        width,
        thickness,
        material: 'wood',
        grain: 'side to side',
        boards,
        note: `${boards} boards glued edge to edge; lay the rings so that they do not all cup one way`,
      },
    ],
    overall: { length, width, height: thickness },
    moving: { part: 'top', thickness },
    counts: noCounts,
    summary: [
      { what: 'Boards, each wide', sizes: [board] },
      { what: 'Slots at least', sizes: [travel.slotLength] },
    ],
    travel,
    findings: [
      ...travel.findings,
      {
        rule: 'top: boards wide enough to look at',
        verdict: judge(board >= 2.5, 'watch'),
        figures: `${boards} of ${tape(board)}`,
        reason: 'many narrow strips look like a chopping board and are many joints to glue',
        change: `boards at most ${Math.max(needed, Math.floor(width / 2.5))}`,
      },
    ],
  };
}
