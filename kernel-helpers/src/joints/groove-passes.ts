import * as z from 'zod';
import { panelThicknessFinding } from '../fit/panel-thickness.js';
import type { Finding } from '../measure/finding.js';
import { evaluate, type Formula } from '../measure/formula.js';
import { readParameters, size } from '../measure/parameters.js';
import { judge, rounding, tape } from '../measure/verdict.js';
import type { SizedBox } from '../piece/box/sized-box.js';
import { type PassDepth, passDepth } from './pass-depth.js';

const source = 'common practice, no source';

/** Passes side by side that a cutter needs for a groove. */
export const passesFormula: Formula<'w' | 'd'> = {
  name: 'Passes across the groove',
  result: { tex: 'n', meaning: 'passes side by side', unit: '' },
  expression: 'ceil(w / d)',
  symbols: {
    w: { meaning: 'width of the groove', unit: 'in', min: 0 },
    d: { meaning: 'diameter of the cutter', unit: 'in', min: 1 / 64 },
  },
  source,
};

/** How a groove is cut: where the fence goes and how deep each time. Inches. */
export interface GroovePasses {
  /** Passes side by side; none when the cutter is too wide. */
  passes: number;
  /** How far the fence is moved on from the first pass, for each. The last is the groove's width less the cutter. */
  offsets: number[];
  /** Heights the cutter is set to, one after the other, each run over all offsets. */
  depths: number[];
  /** Passes in all: side by side times one above the other. */
  inAll: number;
  /** What one pass is deep at most, and from what. */
  bit: PassDepth;
  findings: Finding[];
}

const fields = z.strictObject({
  grooveWidth: size({ least: 1 / 64, most: 30, why: 'width of the groove' }),
  grooveDepth: size({ least: 1 / 64, most: 4, why: 'depth of the groove' }),
  cutter: size({ least: 1 / 64, most: 2, why: 'diameter of the cutter, or width of the blade' }),
  panel: size({ least: 1 / 64, most: 2, why: 'thickness of the panel, measured' }).optional(),
});

/**
 * Passes and fence offsets for a groove.
 *
 *   passes = ceil(w / d)          offsets 0, d, 2 d ... and last w - d
 *
 * Each pass goes no deeper than {@link passDepth} allows.
 *
 * @param groove.grooveWidth, groove.grooveDepth  text or in
 * @param groove.cutter  diameter of the cutter, or width of the blade; text or in
 * @param groove.panel  thickness of what goes in, measured; without it the groove's width is taken for it
 * @returns passes, offsets, depths, findings; in
 * @throws ShopError  one line: the field, the value given, what is possible, why
 * @see common practice, no source
 * @example groovePasses({ grooveWidth: '13/64 in', grooveDepth: '1/4 in', cutter: '1/8 in' }).offsets // [0, 5/64]
 */
export function groovePasses(groove: {
  grooveWidth: number | string;
  grooveDepth: number | string;
  cutter: number | string;
  panel?: number | string;
}): GroovePasses {
  const { grooveWidth, grooveDepth, cutter, panel } = readParameters(fields, { ...groove });
  const tooWide = cutter > grooveWidth + rounding;
  const passes = tooWide ? 0 : evaluate(passesFormula, { w: grooveWidth, d: cutter });
  const offsets = Array.from({ length: passes }, (_, pass) => Math.min(pass * cutter, grooveWidth - cutter));
  const bit = passDepth(cutter);
  const levels = tooWide ? 0 : Math.ceil(grooveDepth / bit.deepest - rounding);
  const depths = Array.from({ length: levels }, (_, level) => (grooveDepth * (level + 1)) / levels);
  const findings: Finding[] = [
    {
      rule: 'cutter goes into the groove',
      verdict: judge(!tooWide && cutter <= (panel ?? grooveWidth) + rounding, 'stop'),
      absolute: 'impossible',
      figures: `cutter ${tape(cutter)}, groove ${tape(grooveWidth)}${panel === undefined ? '' : `, panel measured ${tape(panel)}`}`,
      reason: 'a cutter wider than the panel makes a groove that the panel is loose in, in one pass already',
      change: `a cutter of at most ${tape(Math.min(grooveWidth, panel ?? grooveWidth))}`,
    },
  ];
  if (panel !== undefined) findings.push(panelThicknessFinding({ part: 'panel', panel, groove: grooveWidth }));
  return { passes, offsets, depths, inAll: passes * levels, bit, findings };
}

/** Passes for the grooves of a box, and where the fence stands for each, from the board's lower edge to the near side of the cutter; in. */
export interface BoxGroovePasses extends GroovePasses {
  name: string;
  cutter: number;
  fences: number[];
}

/**
 * Passes for each kind of groove of a box.
 *
 * @param cut.box  with its grooves
 * @param cut.cutter  diameter of the cutter; text or in
 * @param cut.panel  thickness of the bottom, measured; text or in
 * @throws ShopError  as {@link groovePasses}
 */
export function boxGroovePasses(cut: {
  box: Pick<SizedBox, 'grooves'>;
  cutter: number | string;
  panel: number | string;
}): BoxGroovePasses[] {
  const { box, panel } = cut;
  const { cutter } = readParameters(fields.pick({ cutter: true }), { cutter: cut.cutter });
  return [...new Map(box.grooves.map((each) => [each.groove, each])).values()].map(
    ({ groove, fromBottom, width, depth }) => {
      const goesIn = groove === 'bottom' ? { panel } : {};
      const passes = groovePasses({ grooveWidth: width, grooveDepth: depth, cutter, ...goesIn });
      return { name: groove, cutter, fences: passes.offsets.map((offset) => fromBottom + offset), ...passes };
    },
  );
}

/**
 * The straight bit that makes all grooves of a box with the fewest passes: the widest that goes into each of them, and into the one
 * of the bottom past the panel as measured; the narrowest there is where none does.
 *
 * @param kept.bits  diameters; text or in
 * @returns in
 * @throws ShopError  a diameter that is none
 */
export function widestBit(kept: {
  box: Pick<SizedBox, 'grooves'> & { design: { bottomThickness: number } };
  bits: readonly (number | string)[];
}): number {
  const bits = kept.bits.map((cutter) => readParameters(fields.pick({ cutter: true }), { cutter }).cutter);
  const room = Math.min(...kept.box.grooves.map(({ width }) => width), kept.box.design.bottomThickness);
  const fits = bits.filter((bit) => bit <= room + rounding);
  return fits.length > 0 ? Math.max(...fits) : Math.min(...bits);
}
