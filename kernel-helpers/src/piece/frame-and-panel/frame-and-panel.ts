import * as z from 'zod';
import { type MovingPiece, movingPart, type PieceFit, panelFit } from '../../fit/panel-fits.js';
import { panelThicknessFinding, usualGroovePlay } from '../../fit/panel-thickness.js';
import { equilibriumByMonth } from '../../fit/seasonal-fit.js';
import { readParameters, size } from '../../measure/parameters.js';
import { ShopError } from '../../measure/shop-error.js';
import { judge, tape } from '../../measure/verdict.js';
import { noCounts, type SizedPiece } from '../piece.js';

/** All that decides a frame and its panel. Inches. */
export interface FrameDesign {
  width: number;
  height: number;
  thickness: number;
  stileWidth: number;
  railWidth: number;
  grooveDepth: number;
  tenonLength: number;
  panelThickness: number;
  /** What the groove is wider than the panel's edge is thick; nothing in older records. */
  groovePlay?: number;
  endPlay: number;
}

/** A frame of two stiles and two rails with a solid panel. Inches. */
export interface FrameAndPanel extends SizedPiece {
  design: FrameDesign;
  /** The panel's width through the year. */
  fit: PieceFit;
  /** What shows of the panel. */
  opening: { width: number; height: number };
}

const fields: z.ZodType<FrameDesign & { groovePlay: number }> = z.strictObject({
  width: size({ least: 3, most: 60, why: 'width of the frame' }),
  height: size({ least: 3, most: 120, why: 'height of the frame' }),
  thickness: size({ least: 0.375, most: 3, why: 'thickness of the frame' }).default(3 / 4),
  stileWidth: size({ least: 0.75, most: 8, why: 'width of a stile' }).default(2),
  railWidth: size({ least: 0.75, most: 12, why: 'width of a rail' }).default(2),
  grooveDepth: size({ least: 0.125, most: 1, why: 'depth of the groove' }).default(3 / 8),
  tenonLength: size({ least: 0.25, most: 8, why: 'length of a tenon' }).default(1),
  panelThickness: size({ least: 0.125, most: 2, why: "thickness of the panel's edge, in the groove" }).default(1 / 4),
  groovePlay: size({ least: 0, most: 0.125, why: "what the groove is wider than the panel's edge is thick" }).default(
    usualGroovePlay,
  ),
  endPlay: size({ least: 0, most: 0.5, why: 'play of the panel along its grain, in all' }).default(1 / 16),
});

/**
 * Sizes a frame with a solid panel, its grain upright.
 *
 *   rail  = width - 2 stile + 2 tenon          panel = opening + 2 groove - play
 *
 * Across its grain the panel is as wide as the year allows; along it, it only needs play.
 *
 * @param frame  lengths as text or in; species, ring angle and moisture of the panel
 * @returns parts, overall, the panel's fit through the year, findings; in
 * @throws ShopError  one line: the field, the value given, the nearest that is possible, why
 * @see tenon about a third of the thickness: common practice, no source; panel: {@link panelFit}
 */
export function sizeFrameAndPanel(
  frame: MovingPiece & {
    width: number | string;
    height: number | string;
    thickness?: number | string;
    stileWidth?: number | string;
    railWidth?: number | string;
    grooveDepth?: number | string;
    tenonLength?: number | string;
    panelThickness?: number | string;
    groovePlay?: number | string;
    endPlay?: number | string;
  },
): FrameAndPanel {
  const { species, ringAngle, fittingMoisture, air, moistures, ...typed } = frame;
  const read = readParameters(fields, typed);
  const { width, height, thickness, stileWidth, railWidth, grooveDepth, tenonLength, panelThickness } = read;
  const opening = { width: width - 2 * stileWidth, height: height - 2 * railWidth };
  if (opening.width < 1 / 2)
    throw new ShopError(
      `stileWidth: ${tape(stileWidth)} given; possible: up to ${tape((width - 1 / 2) / 2)} in a frame ${tape(width)} wide`,
    );
  if (opening.height < 1 / 2)
    throw new ShopError(
      `railWidth: ${tape(railWidth)} given; possible: up to ${tape((height - 1 / 2) / 2)} in a frame ${tape(height)} high`,
    );
  if (tenonLength > stileWidth)
    throw new ShopError(
      `tenonLength: ${tape(tenonLength)} given; possible: up to ${tape(stileWidth)}, the width of the stile`,
    );
  if (grooveDepth > railWidth / 2)
    throw new ShopError(
      `grooveDepth: ${tape(grooveDepth)} given; possible: up to ${tape(railWidth / 2)} in a rail ${tape(railWidth)} wide (its tenon needs the rest)`,
    );
  const moving = { species, ringAngle, fittingMoisture, air, ...(moistures ? { moistures } : {}) };
  const fit = panelFit({ ...moving, between: opening.width, grooveDepth });
  const railLength = opening.width + 2 * tenonLength;
  const wood = { count: 2, thickness, material: 'wood' } as const;
  return {
    kind: 'frame-and-panel',
    design: read,
    parts: [
      {
        ...wood,
        name: 'stile',
        length: height,
        width: stileWidth,
        grain: 'upright',
        note: 'grooved and mortised',
      },
      {
        ...wood,
        name: 'rail',
        length: railLength,
        width: railWidth,
        grain: 'side to side',
        note: 'tenons included',
      },
      {
        name: 'panel',
        count: 1,
        length: opening.height + 2 * grooveDepth - read.endPlay,
        width: fit.fittedWidth,
        thickness: panelThickness,
        material: 'wood',
        grain: 'upright',
        note: 'dry in its groove, at most a dab of glue at the middle of its ends; finish it before it goes in',
      },
    ],
    overall: { length: thickness, width, height },
    moving: { part: 'panel', thickness: panelThickness },
    counts: { ...noCounts, corner: 4, tenon: 4, groove: 4, grooveLength: 2 * (height + railLength) },
    summary: [
      { what: 'Opening', sizes: [opening.width, opening.height] },
      { what: 'Panel planed to a width of', sizes: [fit.fittedWidth] },
    ],
    fit,
    moves: [movingPart('panel', panelThickness, moving, fit)],
    opening,
    findings: [
      ...fit.findings,
      panelThicknessFinding({
        part: 'panel',
        panel: panelThickness,
        groove: panelThickness + read.groovePlay,
        solid: { ...moving, moistures: moistures ?? equilibriumByMonth(air) },
      }),
      {
        rule: 'frame: groove about a third of the thickness',
        verdict: panelThickness >= thickness / 2 ? 'stop' : judge(panelThickness <= thickness * 0.4, 'watch'),
        figures: `panel's edge ${tape(panelThickness)} in a frame ${tape(thickness)} thick`,
        reason: 'the walls beside a wider groove break when the panel is leant on',
        change: `panelThickness about ${tape(thickness / 3)}: rebate a thicker panel at its edges`,
      },
      {
        rule: 'frame: groove not deeper than the tenon is long',
        verdict: judge(grooveDepth < tenonLength, 'stop'),
        figures: `groove ${tape(grooveDepth)}, tenon ${tape(tenonLength)}`,
        reason: 'the groove takes the first of the mortise away: what goes deeper is what holds',
        change: `tenonLength over ${tape(grooveDepth)}, about two thirds of the stile`,
      },
    ],
  };
}
