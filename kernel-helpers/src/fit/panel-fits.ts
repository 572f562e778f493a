import * as z from 'zod';
import type { Finding } from '../measure/finding.js';
import { amount, known, readParameters, size } from '../measure/parameters.js';
import { tape } from '../measure/verdict.js';
import type { MonthOfAir } from '../wood/air/air.js';
import { movement } from '../wood/movement.js';
import { movementFindings } from '../wood/movement-findings.js';
import { species as speciesOf } from '../wood/species.js';
import type { MovingPart } from './room-findings.js';
import {
  equilibriumByMonth,
  type MonthOfMoisture,
  type SeasonalFit,
  seasonalFindings,
  seasonalFit,
} from './seasonal-fit.js';

/** The wood, the day and the air of a piece that moves in its place. */
export interface MovingPiece {
  species: string;
  /** Degrees, 0 flat-sawn, 90 quarter-sawn. */
  ringAngle: number;
  /** Meter reading today, %. */
  fittingMoisture: number;
  air: MonthOfAir[];
  /** Moisture really reached in each month, %; what it would come to in the air, unless told otherwise. */
  moistures?: MonthOfMoisture[];
}

/** A part that was fitted, as it is held against the room that is decided later. Thickness in inches. @internal */
export function movingPart(
  part: string,
  thickness: number,
  { species, ringAngle, fittingMoisture }: MovingPiece,
  { opening, fittedWidth, limits }: SeasonalFit,
): MovingPart {
  return { part, species, ringAngle, thickness, fittingMoisture, opening, fittedWidth, limits };
}

/** A fit with its findings. */
export type PieceFit = SeasonalFit & { findings: Finding[] };

const pieceFields = {
  species: known(speciesOf, 'the wood of the piece'),
  ringAngle: amount({ least: 0, most: 90, unit: 'degrees', why: '0 flat-sawn, 90 quarter-sawn' }),
  fittingMoisture: amount({ least: 3, most: 20, unit: '%', why: 'moisture today, by meter' }),
};
const across = size({ least: 0.5, most: 120, why: 'across the grain' });
const grooveDepth = size({ least: 1 / 16, most: 1, why: 'depth of the groove, each side' });
const clearance = (why: string) => size({ least: 0, most: 1, why });
const remedies =
  'quarter-sawn wood, a calmer species, a deeper groove, or fitting at a moisture nearer the middle of the year';

/**
 * A solid panel in grooves on two sides: a box's solid bottom, a frame's panel.
 *
 * @param panel.part  what it is called in the findings; panel unless told otherwise
 * @param panel.between  between the inside edges of what holds it, across the panel's grain; text or in
 * @param panel.grooveDepth  each side; text or in
 * @param panel.leastEngagement  part of the groove that the centred panel must still reach in the driest month; half
 *   unless told otherwise
 * @param panel.leastClearance  play that must stay in the wettest month, in all; 1/64 in unless told otherwise
 * @returns width to plane to, window, months, findings; in
 * @throws ShopError  one line: the field, the value given, what is possible, why
 * @see common practice, no source; {@link seasonalFit}
 */
export function panelFit(
  panel: MovingPiece & {
    part?: string;
    between: number | string;
    grooveDepth: number | string;
    leastEngagement?: number;
    leastClearance?: number | string;
  },
): PieceFit {
  const read = readParameters(
    z.object({
      ...pieceFields,
      between: across,
      grooveDepth,
      leastEngagement: amount({ least: 0, most: 1, why: "part of the groove's depth that must hold" }).default(0.5),
      leastClearance: clearance('play that must stay in the wettest month, in all').default(1 / 64),
    }),
    { ...panel },
  );
  const fit = seasonalFit({
    ...read,
    opening: read.between + 2 * read.grooveDepth,
    moistures: panel.moistures ?? equilibriumByMonth(panel.air),
    mostClearance: 2 * read.grooveDepth * (1 - read.leastEngagement),
    cuttingTolerance: 1 / 64,
  });
  const words = {
    piece: panel.part ?? 'panel',
    tight: 'it pushes the corners apart',
    loose: 'it shows its edge or rattles',
  };
  return { ...fit, findings: seasonalFindings(fit, words, remedies, read) };
}

/**
 * A solid bottom that is slid into a drawer from behind, its grain from side to side: glued in the front's groove, under the
 * back and free there, so that all it moves shows behind the back.
 *
 * @param bottom.reach  from the floor of the front's groove to the back's outer face; text or in
 * @param bottom.under  thickness of the back that it lies under; 1/8 in of it must still be covered in the driest month
 * @returns depth of the bottom, front to back, to plane to, window, months, findings; in
 * @throws ShopError  one line: the field, the value given, what is possible, why
 * @see common practice, no source; {@link seasonalFit}
 */
export function drawerBottomFit(bottom: MovingPiece & { reach: number | string; under: number | string }): PieceFit {
  const read = readParameters(
    z.object({
      ...pieceFields,
      reach: across,
      under: size({ least: 1 / 4, most: 2, why: 'thickness of the back that it lies under' }),
    }),
    { ...bottom },
  );
  const fit = seasonalFit({
    ...read,
    opening: read.reach,
    moistures: bottom.moistures ?? equilibriumByMonth(bottom.air),
    leastClearance: 0,
    mostClearance: read.under - 1 / 8,
    cuttingTolerance: 1 / 64,
  });
  const words = {
    piece: 'drawer bottom',
    size: 'depth',
    tight: 'it stands out behind the back',
    loose: 'it slips out from under the back',
  } as const;
  return {
    ...fit,
    findings: seasonalFindings(fit, words, 'quarter-sawn or calmer wood, a thicker back, or plywood', read),
  };
}

/**
 * A drawer's height in its opening: solid sides and front move in height, the carcase's opening along its grain does not. A gap in
 * winter is seen and harms nothing: where no height keeps it small, the drawer is planed so that it does not stick in summer.
 *
 * @param drawer.opening  height of the opening; text or in
 * @param drawer.leastClearance, drawer.mostClearance  in all; 1/32 and 3/16 in unless told otherwise
 * @returns height to plane to, window, months, findings; in
 * @throws ShopError  one line: the field, the value given, what is possible, why
 * @see common practice, no source; {@link seasonalFit}
 */
export function drawerFit(
  drawer: MovingPiece & {
    opening: number | string;
    leastClearance?: number | string;
    mostClearance?: number | string;
  },
): PieceFit {
  const read = readParameters(
    z.object({
      ...pieceFields,
      opening: across,
      leastClearance: clearance('play over the drawer in the wettest month').default(1 / 32),
      mostClearance: clearance('gap over the drawer in the driest month').default(3 / 16),
    }),
    { ...drawer },
  );
  const fit = seasonalFit({
    ...read,
    moistures: drawer.moistures ?? equilibriumByMonth(drawer.air),
    gapOnlyShows: true,
    cuttingTolerance: 1 / 64,
  });
  const words = { piece: 'drawer', size: 'height', tight: 'it sticks', loose: 'the gap over it shows' } as const;
  return {
    ...fit,
    findings: seasonalFindings(fit, words, 'quarter-sawn wood, a calmer species, or a shallower drawer', read),
  };
}

/** How far the fasteners of a solid top must let it move. Inches. */
export interface FastenerTravel {
  /** Outward from the fixed line at the wettest, and inward at the driest, for the farthest fastener. */
  outward: number;
  inward: number;
  /** Slot that serves both, the screw's own thickness included. */
  slotLength: number;
  findings: Finding[];
}

/**
 * A solid table top fastened so that it can move: how far the farthest fastener travels, and how long its slot must be.
 *
 * @param top.fromFixed  from the line where the top is fixed to the farthest fastener, across the grain; text or in
 * @param top.screw  thickness of the screw's shank; text or in; 3/16 in unless told otherwise
 * @returns travel and slot; nine boards in ten need no more; in
 * @throws ShopError  one line: the field, the value given, what is possible, why
 * @see common practice, no source; {@link movement}
 */
export function fastenerTravel(
  top: MovingPiece & { fromFixed: number | string; screw?: number | string; slot?: number | string },
): FastenerTravel {
  const read = readParameters(
    z.object({
      ...pieceFields,
      fromFixed: across,
      screw: size({ least: 1 / 16, most: 1 / 2, why: "thickness of the screw's shank" }).default(3 / 16),
      slot: size({ least: 1 / 16, most: 4, why: 'length of the slot you have' }).optional(),
    }),
    { ...top },
  );
  const moistures = top.moistures ?? equilibriumByMonth(top.air);
  const moves = moistures.map(({ moisture }) =>
    movement({
      across: read.fromFixed,
      species: read.species,
      ringAngle: read.ringAngle,
      fromMoisture: read.fittingMoisture,
      toMoisture: moisture,
    }),
  );
  const outward = Math.max(0, ...moves.map(({ high }) => high));
  const inward = Math.max(0, ...moves.map(({ low }) => -low));
  const slotLength = outward + inward + read.screw;
  const findings: Finding[] = [
    {
      rule: 'top: fasteners let it move',
      verdict: read.slot === undefined || read.slot >= slotLength ? 'ok' : 'stop',
      figures: `${tape(outward)} outward and ${tape(inward)} inward from today: a slot of ${tape(slotLength)} with a screw of ${tape(read.screw)}`,
      reason: 'a wide top that is held fast splits along its grain',
      change: `slots at least ${tape(slotLength)} long, the screw set ${tape(inward)} from their inner end`,
    },
    ...movementFindings({
      piece: 'top',
      species: read.species,
      ringAngle: read.ringAngle,
      moistures: [read.fittingMoisture, ...moistures.map(({ moisture }) => moisture)],
    }),
  ];
  return { outward, inward, slotLength, findings };
}
