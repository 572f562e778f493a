import * as z from 'zod';
import { usualGroovePlay } from '../../fit/panel-thickness.js';
import { evaluate } from '../../measure/formula.js';
import { amount, oneOf, readParameters, size } from '../../measure/parameters.js';
import { ShopError } from '../../measure/shop-error.js';
import { tape } from '../../measure/verdict.js';
import type { MonthOfAir } from '../../wood/air/air.js';
import { insideFields } from '../brief.js';
import { noCounts } from '../piece.js';
import { boxBottom } from './bottom.js';
import { boxFindings } from './box-findings.js';
import { lidGrooveDepthFor } from './lid-groove-depth.js';
import { boardLengthFormula, heightFormula, lidLengthFormula, lidWidthFormula } from './size-formulas.js';
import type { BoxDesign, Groove, Part, SizedBox } from './sized-box.js';

/** What may be typed: lengths as text or inches, anything but the inside and the wood may be left out. */
export type BoxBrief = { [field in keyof BoxDesign]?: BoxDesign[field] | string } & {
  insideLength: number | string;
  insideWidth: number | string;
  insideDepth: number | string;
  species: string;
  /** A year of the room it goes to, as `yearOfAir` gives it: a solid bottom, and grooves of the lid left out, are sized for it. */
  air?: MonthOfAir[];
};

const designFields: z.ZodType<BoxDesign & { bottomGroovePlay: number }> = z.strictObject({
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
  bottomGroovePlay: size({ least: 0, most: 0.125, why: "what the bottom's groove is wider than the bottom" }).default(
    usualGroovePlay,
  ),
  bottomMoisture: amount({ least: 3, most: 20, unit: '%', why: 'meter reading of a solid bottom today' }).default(8),
  bottomRingAngle: amount({ least: 0, most: 90, unit: 'degrees', why: '0 flat-sawn, 90 quarter-sawn' }).default(0),
});

/**
 * Sizes a box with a sliding lid and through joints: every part, groove and outside size from the inside size.
 *
 *   height   = foot + bottom + inside depth + lid         (sides and back; the front is lower by the lid)
 *   boards   = inside + 2 (thickness + proud)
 *   lid      = inside width + 2 (groove depth - clearance)
 *              by inside length + front thickness + groove depth - clearance
 *   bottom   = inside + 2 groove depth - clearance; a solid one, across its grain, what its year allows
 *
 * @param brief  lengths as text (`9 1/2 in`) or inches; see {@link BoxDesign} for each field
 * @param brief.lidGrooveDepth  left out or '': as deep as the lid's year asks; 1/4 in where no `air` is given
 * @param brief.air  the year of the room it goes to: for a solid bottom, and for that depth
 * @returns parts with finished sizes, overall size, grooves, gauge setting, findings; all in inches
 * @throws ShopError  one line: the field, the value given, what is possible, why
 * @see common practice, no source; solid bottom: `panelFit`
 * @example sizeBox({ insideLength: '9 1/2 in', insideWidth: '6 1/4 in', insideDepth: '4 in', species: 'walnut-black' })
 */
export function sizeBox(brief: BoxBrief): SizedBox {
  const { air, ...typed } = brief;
  const depthGiven = typed.lidGrooveDepth !== undefined && typed.lidGrooveDepth !== '';
  const read = readParameters(designFields, depthGiven ? typed : { ...typed, lidGrooveDepth: undefined });
  const design = depthGiven || !air ? read : { ...read, lidGrooveDepth: lidGrooveDepthFor({ ...read, air }) };
  refuseContradictions(design);

  const { insideLength, insideWidth, insideDepth, stockThickness, proud, foot } = design;
  const { lidThickness, tongueThickness, lidGrooveDepth, lidClearance } = design;
  const { bottomThickness, bottomGrooveDepth } = design;
  const sideHeight = evaluate(heightFormula, { f: foot, tb: bottomThickness, D: insideDepth, tl: lidThickness });
  const joint = { t: stockThickness, p: proud };
  const lengthwise = evaluate(boardLengthFormula, { I: insideLength, ...joint });
  const crosswise = evaluate(boardLengthFormula, { I: insideWidth, ...joint });
  const lid = { g: lidGrooveDepth, c: lidClearance };
  const bottom = boxBottom(design, design.bottomGroovePlay, air);
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
    bottom.part,
  ];
  const bottomGroove = {
    groove: 'bottom',
    fromBottom: foot,
    width: bottomThickness + design.bottomGroovePlay,
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
  // Each of the two sides has its own.
  const grooved = grooves.map(({ board }) =>
    board === 'side' ? { count: 2, length: lengthwise } : { count: 1, length: crosswise },
  );
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
    ...(bottom.moves.length > 0 && { moves: bottom.moves }),
    counts: {
      ...noCounts,
      corner: 4,
      lid: 1,
      groove: grooved.reduce((sum, { count }) => sum + count, 0),
      grooveLength: grooved.reduce((sum, { count, length }) => sum + count * length, 0),
    },
    summary: [
      { what: 'Inside', sizes: [insideLength, insideWidth, insideDepth] },
      { what: 'Marking gauge', sizes: [sized.markingGauge] },
    ],
    findings: [...boxFindings(sized), ...bottom.findings],
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
}
