import type { Formula, FormulaSymbol } from '../../measure/formula.js';

const inches = (tex: string, meaning: string): FormulaSymbol => ({ tex, meaning, unit: 'in', min: 0 });
const source = 'common practice, no source';

/** Height of sides and back: what lies on what, from the bench up. */
export const heightFormula: Formula<'f' | 'tb' | 'D' | 'tl'> = {
  name: 'Height of the sides',
  result: inches('H', 'height of sides and back'),
  expression: 'f + tb + D + tl',
  symbols: {
    f: inches('f', 'foot under the bottom groove'),
    tb: inches('t_b', 'thickness of the bottom'),
    D: inches('D', 'clear depth inside'),
    tl: inches('t_l', 'thickness of the lid'),
  },
  source,
};

/** Length of a board with through joints on both ends. */
export const boardLengthFormula: Formula<'I' | 't' | 'p'> = {
  name: 'Length of a board',
  result: inches('L', 'length of the board'),
  expression: 'I + 2 * (t + p)',
  symbols: {
    I: inches('I', 'inside size along the board'),
    t: inches('t', 'thickness of the stock'),
    p: inches('p', 'how far the joint stands proud'),
  },
  source,
};

/** Width of the sliding lid, tongues included. */
export const lidWidthFormula: Formula<'W' | 'g' | 'c'> = {
  name: 'Width of the lid',
  result: inches('w', 'width of the lid'),
  expression: 'W + 2 * (g - c)',
  symbols: {
    W: inches('W', 'inside width'),
    g: inches('g_l', 'depth of the lid groove'),
    c: inches('c', 'clearance each side'),
  },
  source,
};

/** Length of the sliding lid: flush with the front's face, its tongue in the back's groove. */
export const lidLengthFormula: Formula<'L' | 't' | 'g' | 'c'> = {
  name: 'Length of the lid',
  result: inches('l', 'length of the lid'),
  expression: 'L + t + g - c',
  symbols: {
    L: inches('L', 'inside length'),
    t: inches('t', 'thickness of the front'),
    g: inches('g_l', 'depth of the lid groove'),
    c: inches('c', 'clearance at the back'),
  },
  source,
};
