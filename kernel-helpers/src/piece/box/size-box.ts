import * as z from 'zod';
import { evaluate } from '../../measure/formula.js';
import { amount, oneOf, readParameters, size } from '../../measure/parameters.js';
import { ShopError } from '../../measure/shop-error.js';
import { tape } from '../../measure/verdict.js';
import { movement } from '../../wood/movement.js';
import { insideFields } from '../brief.js';
import { noCounts } from '../piece.js';
import { boxFindings } from './box-findings.js';
import { boardLengthFormula, heightFormula, lidLengthFormula, lidWidthFormula } from './size-formulas.js';
import type { BoxDesign, Groove, Part, SizedBox } from './sized-box.js';

/** What may be typed: lengths as text or inches, anything but the inside and the wood may be left out. */
export type BoxBrief = { [field in keyof BoxDesign]?: BoxDesign[field] | string } & {
  insideLength: number | string;
  insideWidth: number | string;
  insideDepth: number | string;
  species: string;
};

const designFields: z.ZodType<BoxDesign> = z.strictObject({
  ...insideFields,
  joint: insideFields.joint.default('through dovetail'),
  stockThickness: size({ least: 0.25, most: 1.5, why: 'thickness of the four boards' }).default(0.625),
  proud: size({ least: 0, most: 0.5, why: 'how far the joint stands past the face' }).default(0),
  foot: size({ least: 0, most: 3, why: 'wood under the groove of the bottom' }).default(0.25),
  lidThickness: size({ least: 0.1875, most: 1.5, why: 'thickness of the lid' }).default(0.5),
  tongueThickness: size({ least: 0.0625, most: 1, why: "thickness of the lid's tongue" }).default(0.25),
  lidGrooveDepth: size({ least: 0.0625, most: 1, why: 'depth of the groove that the lid runs in' }).default(0.25),
  lidClearance: size({ least: 0, most: 0.5, why: 'between tongue and groove floor, each side' }).default(0.03125),
  bottom: oneOf(['plywood', 'solid'], 'what the bottom is made of').default('plywood'),
  bottomThickness: size({ least: 0.0625, most: 1, why: 'measured with a caliper, not nominal' }).default(0.203125),
  bottomGrooveDepth: size({ least: 0.0625, most: 1, why: 'depth of the groove for the bottom' }).default(0.25),
  bottomClearance: size({ least: 0, most: 0.5, why: 'play of the bottom in its grooves, in all' }).default(0.046875),
  bottomMoisture: amount({
    least: 2,
    most: 20,
    unit: '%',
    why: 'moisture of a solid bottom when it is fitted',
  }).default(8),
  bottomWettest: amount({ least: 2, most: 25, unit: '%', why: 'most moisture a solid bottom will reach' }).default(13),
  bottomRingAngle: amount({ least: 0, most: 90, unit: 'degrees', why: '0 flat-sawn, 90 quarter-sawn' }).default(0),
});

/**
 * Sizes a box with a sliding lid and through joints: every part, groove and outside size from the inside size.
 *
 *   height   = foot + bottom + inside depth + lid         (sides and back; the front is lower by the lid)
 *   boards   = inside + 2 (thickness + proud)
 *   lid      = inside width + 2 (groove depth - clearance)
 *              by inside length + front thickness + groove depth - clearance
 *   bottom   = inside + 2 groove depth - clearance; a solid one leaves room to swell across its grain
 *
 * @param brief  lengths as text (`9 1/2 in`) or inches; see {@link BoxDesign} for each field
 * @returns parts with finished sizes, overall size, grooves, gauge setting, findings; all in inches
 * @throws ShopError  one line: the field, the value given, what is possible, why
 * @see common practice, no source
 * @example sizeBox({ insideLength: '9 1/2 in', insideWidth: '6 1/4 in', insideDepth: '4 in', species: 'walnut-black' })
 */
export function sizeBox(brief: BoxBrief): SizedBox {
  const design = readParameters(designFields, brief);
  refuseContradictions(design);

  const { insideLength, insideWidth, insideDepth, stockThickness, proud, foot } = design;
  const { lidThickness, tongueThickness, lidGrooveDepth, lidClearance } = design;
  const { bottomThickness, bottomGrooveDepth } = design;
  const sideHeight = evaluate(heightFormula, { f: foot, tb: bottomThickness, D: insideDepth, tl: lidThickness });
  const joint = { t: stockThickness, p: proud };
  const lengthwise = evaluate(boardLengthFormula, { I: insideLength, ...joint });
  const crosswise = evaluate(boardLengthFormula, { I: insideWidth, ...joint });
  const lid = { g: lidGrooveDepth, c: lidClearance };
  const boards = { count: 1, thickness: stockThickness, material: 'wood' } as const;

  const parts: Part[] = [
    {
      ...boards,
      name: 'side',
      count: 2,
      length: lengthwise,
      width: sideHeight,
      grain: 'front to back',
      note: 'grooved for lid and bottom',
    },
    {
      ...boards,
      name: 'front',
      length: crosswise,
      width: sideHeight - lidThickness,
      widthBefore: sideHeight,
      grain: 'side to side',
      note: `${tape(sideHeight)} wide for joint and grooves, its upper edge then lowered by the lid`,
    },
    {
      ...boards,
      name: 'back',
      length: crosswise,
      width: sideHeight,
      grain: 'side to side',
      note: 'grooved for lid and bottom',
    },
    {
      ...boards,
      name: 'lid',
      length: evaluate(lidLengthFormula, { L: insideLength, t: stockThickness, ...lid }),
      width: evaluate(lidWidthFormula, { W: insideWidth, ...lid }),
      thickness: lidThickness,
      grain: 'front to back',
      note: `upper face rabbeted ${tape(lidGrooveDepth)} wide along both long edges and the back end; sheet 04 settles how deep, and how wide the lid is`,
    },
    bottomPart(design),
  ];
  const bottomGroove = {
    groove: 'bottom',
    fromBottom: foot,
    width: bottomThickness,
    depth: bottomGrooveDepth,
  } as const;
  const lidGroove = {
    groove: 'lid',
    fromBottom: foot + bottomThickness + insideDepth,
    width: tongueThickness,
    depth: lidGrooveDepth,
  } as const;
  const grooves: Groove[] = [
    { board: 'side', ...bottomGroove },
    { board: 'side', ...lidGroove },
    { board: 'front', ...bottomGroove },
    { board: 'back', ...bottomGroove },
    { board: 'back', ...lidGroove },
  ];
  const sized = {
    design,
    parts,
    overall: { length: lengthwise, width: crosswise, height: sideHeight },
    grooves,
    markingGauge: stockThickness + proud,
  };
  return {
    kind: 'box',
    ...sized,
    moving: { part: 'lid', thickness: lidThickness },
    // Each of the two sides has its own.
    counts: {
      ...noCounts,
      corner: 4,
      lid: 1,
      groove: grooves.reduce((sum, { board }) => sum + (board === 'side' ? 2 : 1), 0),
    },
    summary: [
      { what: 'Inside', sizes: [insideLength, insideWidth, insideDepth] },
      { what: 'Marking gauge', sizes: [sized.markingGauge] },
    ],
    findings: boxFindings(sized),
  };
}

/** The bottom panel. A solid one has its grain along the longer way and leaves room to swell across it. */
function bottomPart(design: BoxDesign): Part {
  const { insideLength, insideWidth, bottomGrooveDepth, bottomClearance, bottomThickness } = design;
  const opening = { length: insideLength + 2 * bottomGrooveDepth, width: insideWidth + 2 * bottomGrooveDepth };
  const along = Math.max(opening.length, opening.width);
  const across = Math.min(opening.length, opening.width);
  const panel = { name: 'bottom', count: 1, thickness: bottomThickness } as const;
  if (design.bottom === 'plywood')
    return {
      ...panel,
      length: opening.length - bottomClearance,
      width: opening.width - bottomClearance,
      grain: 'none',
      material: 'plywood',
      note: 'plywood, measured thickness; glue it in if you like',
    };
  const swelling = movement({
    across,
    species: design.species,
    ringAngle: design.bottomRingAngle,
    fromMoisture: design.bottomMoisture,
    toMoisture: design.bottomWettest,
  });
  return {
    ...panel,
    length: along - bottomClearance,
    width: across - Math.max(0, swelling.high) - bottomClearance,
    grain: opening.length >= opening.width ? 'front to back' : 'side to side',
    material: 'wood',
    note: 'solid: dry in its grooves, at most a dab of glue at the middle of its ends',
  };
}

/** Fields that are each possible but not together. */
function refuseContradictions(design: BoxDesign): void {
  const least = (field: keyof BoxDesign, given: number, below: number, why: string) => {
    if (given >= below)
      throw new ShopError(`${field}: ${tape(given)} given; possible: less than ${tape(below)} (${why})`);
  };
  least('lidGrooveDepth', design.lidGrooveDepth, design.stockThickness, 'the groove would come through the board');
  least(
    'bottomGrooveDepth',
    design.bottomGrooveDepth,
    design.stockThickness,
    'the groove would come through the board',
  );
  least(
    'tongueThickness',
    design.tongueThickness,
    design.lidThickness,
    'the tongue is what the rabbet leaves of the lid',
  );
  least('lidClearance', design.lidClearance, design.lidGrooveDepth, 'the tongue would not reach into its groove');
  least(
    'bottomClearance',
    design.bottomClearance,
    2 * design.bottomGrooveDepth,
    'the bottom would fall out of its grooves',
  );
  if (design.bottom === 'solid' && design.bottomWettest < design.bottomMoisture)
    throw new ShopError(
      `bottomWettest: ${design.bottomWettest} % given; possible: at least the ${design.bottomMoisture} % it is fitted at (bottomMoisture)`,
    );
}
