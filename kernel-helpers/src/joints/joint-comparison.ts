import * as z from 'zod';
import { evaluate, type Formula, type FormulaSymbol } from '../measure/formula.js';
import { amount, readParameters } from '../measure/parameters.js';
import type { DovetailLayout } from './dovetails.js';
import type { FingerLayout } from './finger-layout.js';
import type { KeyedMitreLayout } from './keyed-mitre.js';
import type { RabbetLayout } from './rabbet.js';

const inches = (tex: string, meaning: string): FormulaSymbol => ({ tex, meaning, unit: 'in', min: 0 });

/** Long grain on long grain in a dovetailed corner: both sides of every tail. */
export const dovetailGlueFormula: Formula<'k' | 't' | 'n'> = {
  name: 'Glue area of the dovetails',
  result: { tex: 'A', meaning: 'long grain on long grain', unit: 'sq in', min: 0 },
  expression: '2 * k * t^2 * sqrt(1 + 1 / n^2)',
  symbols: {
    k: { meaning: 'tails', unit: '', min: 1 },
    t: inches('t', 'thickness of the stock'),
    n: { meaning: 'slope, one across to n along', unit: '', min: 3, max: 12 },
  },
  source: 'geometry: a side of a tail is as long as the neighbour is thick, over the cosine of the slope',
};

/** Long grain on long grain in a finger joint: every face between two fingers. */
export const fingerGlueFormula: Formula<'N' | 't'> = {
  name: 'Glue area of the fingers',
  result: { tex: 'A', meaning: 'long grain on long grain', unit: 'sq in', min: 0 },
  expression: '(N - 1) * t^2',
  symbols: {
    N: { meaning: 'fingers of both boards together', unit: '', min: 2 },
    t: inches('t', 'thickness of the stock'),
  },
  source: 'geometry',
};

/** One joint of the comparison, for one corner. */
export interface JointCompared {
  joint: 'through dovetail' | 'finger joint' | 'keyed mitre' | 'rabbet';
  layout: DovetailLayout | FingerLayout | KeyedMitreLayout | RabbetLayout;
  /** Square inches. */
  longGrain: number;
  /** Square inches in which at least one of the two faces is end grain. */
  endGrain: number;
  /** Long grain in full, end grain by its share. Square inches. */
  counted: number;
  /** What holds it besides glue. */
  holds: string;
}

const fields = z.strictObject({
  endGrainShare: amount({ least: 0, most: 1, why: 'what an area with end grain counts for' }).default(0.25),
});

/**
 * Glue area of the joints that were laid out, for one corner.
 *
 * Areas are exact, from the geometry of the faces that touch. A face pair counts as long grain when the fibres of both
 * boards lie in it; as end grain when either board shows its ends there, at a mitre too. An end-grain area counts for a
 * quarter unless told otherwise (from memory: a sound butt joint on end grain reaches about a quarter of the wood's strength).
 *
 * @param joints  the layouts to compare, any of the four
 * @param joints.endGrainShare  0 to 1; what an area with end grain counts for
 * @returns one row for each joint given; square in
 * @throws ShopError  a share outside 0 to 1
 * @see geometry
 */
export function compareJoints(joints: {
  dovetails?: DovetailLayout;
  fingers?: FingerLayout;
  keyedMitre?: KeyedMitreLayout;
  rabbet?: RabbetLayout;
  endGrainShare?: number;
}): JointCompared[] {
  const { dovetails, fingers, keyedMitre, rabbet, ...rest } = joints;
  const { endGrainShare } = readParameters(fields, rest);
  const row = (
    joint: JointCompared['joint'],
    layout: JointCompared['layout'],
    area: { longGrain: number; endGrain: number },
    holds: string,
  ): JointCompared => ({
    ...{ joint, layout, ...area, holds },
    counted: area.longGrain + endGrainShare * area.endGrain,
  });
  const rows: JointCompared[] = [];
  if (dovetails)
    rows.push(
      row(
        'through dovetail',
        dovetails,
        dovetailAreas(dovetails),
        'the slope of the tails, one way, and glue on their sides',
      ),
    );
  if (fingers) {
    const { count, stockThickness, boardWidth } = fingers;
    const longGrain = evaluate(fingerGlueFormula, { N: count, t: stockThickness });
    rows.push(
      row('finger joint', fingers, { longGrain, endGrain: boardWidth * stockThickness }, 'glue alone, on many faces'),
    );
  }
  if (keyedMitre) {
    const { mitre, keys } = keyedMitre.glueArea;
    rows.push(row('keyed mitre', keyedMitre, { longGrain: keys, endGrain: mitre }, 'the keys'));
  }
  if (rabbet) {
    const { floor, shoulder } = rabbet.glueArea;
    rows.push(row('rabbet', rabbet, { longGrain: 0, endGrain: floor + shoulder }, 'pegs, pins or screws'));
  }
  return rows;
}

/** Faces that touch in a dovetailed corner; the ends that stand proud touch nothing. */
function dovetailAreas({ tails, pins, stockThickness: t, slope }: DovetailLayout) {
  const longGrain = evaluate(dovetailGlueFormula, { k: tails.length, t, n: slope });
  // Inside faces of the pins on the floors of the sockets in the tail board, at the baseline.
  const pinFloors = pins.reduce((sum, { baselineFrom, baselineTo }) => sum + (baselineTo - baselineFrom) * t, 0);
  // Inside faces of the tails on the floors of the sockets in the pin board: trapezoids as long as the stock is thick.
  const tailFloors = tails.reduce(
    (sum, { baselineFrom, baselineTo }) => sum + (baselineTo - baselineFrom + t / slope) * t,
    0,
  );
  return { longGrain, endGrain: pinFloors + tailFloors };
}
