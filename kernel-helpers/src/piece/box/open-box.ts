import { type BoxBrief, sizeBox } from './size-box.js';
import type { BoxDesign, Groove, Part } from './sized-box.js';

/** A field of the box that belongs to its sliding lid. */
type LidField = 'lidThickness' | 'tongueThickness' | 'lidGrooveDepth' | 'lidClearance';

/** What may be typed for a box without its lid. */
export type OpenBoxBrief = Omit<BoxBrief, LidField>;

/** A box to which a lid of another kind, or none, is fitted. Inches. No sheet takes it yet: kept for such boxes. */
export interface OpenBox {
  design: Omit<BoxDesign, LidField>;
  /** Two sides, front and back of one height, and the bottom. */
  parts: Part[];
  overall: { length: number; width: number; height: number };
  grooves: Groove[];
  markingGauge: number;
  findings: ReturnType<typeof sizeBox>['findings'];
}

/** Lid of the sliding-lid box that is sized on the way and taken off again. */
const noLid = { lidThickness: 0.5, tongueThickness: 0.25, lidGrooveDepth: 0.1875, lidClearance: 0.03125 };

/** Findings that speak of the sliding lid. */
const ofTheLid = new Set(['lid groove at most half the board', 'wood over the lid groove', 'lid held by its grooves']);

/**
 * Sizes a box without its lid: the boards end at the clear depth, and front and back are alike.
 *
 *   height = foot + bottom + inside depth
 *
 * @param brief  as for `sizeBox`, without what belongs to a sliding lid
 * @returns parts, overall size, grooves, findings; in
 * @throws ShopError  one line: the field, the value given, what is possible, why
 * @see common practice, no source; {@link sizeBox}
 */
export function sizeOpenBox(brief: OpenBoxBrief): OpenBox {
  const box = sizeBox({ ...brief, ...noLid } as BoxBrief);
  const { lidThickness, tongueThickness: _k, lidGrooveDepth: _g, lidClearance: _c, ...design } = box.design;
  const height = box.overall.height - lidThickness;
  const open = (part: Part): Part => {
    if (part.name === 'bottom') return part;
    const { widthBefore: _before, ...board } = part;
    return { ...board, width: height, note: 'grooved for the bottom' };
  };
  return {
    ...box,
    design,
    parts: box.parts.filter(({ name }) => name !== 'lid').map(open),
    overall: { ...box.overall, height },
    grooves: box.grooves.filter(({ groove }) => groove !== 'lid'),
    findings: box.findings.filter(({ rule }) => !ofTheLid.has(rule)),
  };
}
