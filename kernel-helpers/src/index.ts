export type { Finding, Verdict } from './measure/finding.js';
export type { Formula, FormulaSymbol } from './measure/formula.js';
export { evaluate } from './measure/formula.js';
export { ShopError } from './measure/shop-error.js';
