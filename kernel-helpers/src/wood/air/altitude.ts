import * as z from 'zod';
import type { Formula } from '../../measure/formula.js';
import { ShopError } from '../../measure/shop-error.js';

/** How much colder it is higher up: in the standard atmosphere. */
export const lapseFormula: Formula<'T' | 'h'> = {
  name: 'Temperature higher up',
  result: { tex: 'T_h', meaning: 'mean temperature at the height asked for', unit: '°C' },
  expression: 'T - 0.0065 * h',
  symbols: {
    T: { tex: 'T', meaning: 'mean temperature at the place below', unit: '°C', min: -60, max: 60 },
    h: { tex: 'h', meaning: 'how much higher', unit: 'm', min: -6000, max: 6000 },
  },
  source: 'ISO 2533, standard atmosphere: 6.5 °C for each 1,000 m (from memory)',
};

/** How much less vapour there is higher up: in mountains, on the mean of many years. */
export const vapourHigherFormula: Formula<'p' | 'h'> = {
  name: 'Vapour higher up',
  result: { tex: 'p_h', meaning: 'vapour pressure at the height asked for', unit: 'Pa' },
  expression: 'p * 10 ^ (-h / 6300)',
  symbols: {
    p: { tex: 'p', meaning: 'vapour pressure at the place below', unit: 'Pa', min: 0 },
    h: { tex: 'h', meaning: 'how much higher', unit: 'm', min: -6000, max: 6000 },
  },
  source: 'Hann, after measurements on mountains (from memory)',
};

/**
 * A height above the sea, typed as `10,150 ft` or `3,094 m`; read as m.
 *
 * @internal
 */
export const altitude: z.ZodType<number> = z.any().transform((typed, context) => {
  try {
    return readAltitude(typed);
  } catch (error) {
    context.addIssue((error as Error).message);
    return z.NEVER;
  }
});

function readAltitude(typed: unknown): number {
  const possible =
    'possible: a height above the sea with its unit, such as 10,150 ft or 3,094 m, from -500 m to 6,000 m';
  const match = /^(-?[\d,]*\.?\d+)\s*(ft|feet|foot|'|m|metres?|meters?)$/i.exec(String(typed).trim());
  if (!match) throw new ShopError(possible);
  const [, digits = '', unit = ''] = match;
  const metres = Number(digits.replaceAll(',', '')) * (/^m/i.test(unit) ? 1 : 0.3048);
  if (!(metres >= -500 && metres <= 6000)) throw new ShopError(possible);
  return metres;
}
