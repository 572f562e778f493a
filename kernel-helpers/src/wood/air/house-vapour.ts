import * as z from 'zod';
import data from '../../../../data/house-vapour.json';
import { dataTable } from '../../measure/data-file.js';
import type { Formula } from '../../measure/formula.js';
import { saturationPressure } from './psychrometrics.js';

/** What those who live in a house add to its air: breath, cooking, washing. */
export interface Occupancy {
  /** Such as `home`. */
  id: string;
  use: string;
  /** Vapour indoors more than outdoors at 0 °C outdoors and below, g/m³. */
  addedInTheCold: number;
  source: string;
  fromMemory: boolean;
}

const occupancyEntry: z.ZodType<Occupancy> = z.strictObject({
  id: z.string().regex(/^[a-z0-9-]+$/),
  use: z.string().min(1),
  addedInTheCold: z.number().min(0).max(10),
  source: z.string().min(1),
  fromMemory: z.boolean(),
});

const occupancies = dataTable('house-vapour.json', data, {
  list: 'occupancies',
  what: 'way a house is lived in',
  entry: occupancyEntry,
});

/**
 * How much vapour a house adds, by how it is lived in.
 *
 * @param id  `empty`, `seldom-used`, `home`, `full-home` or `damp`
 * @throws ShopError  names the nearest
 */
export function occupancy(id: string): Occupancy {
  return occupancies.entry(id);
}

/** All ways of living in a house, driest first. */
export function allOccupancies(): Occupancy[] {
  return occupancies.all();
}

/**
 * Humidity that the people in a house add to its air. Half of it is left at 10 °C outdoors, nothing at 20 °C, for windows
 * stand open. Good to a third: houses of one class differ that much (0.3 to 4.9 g/m³ measured in 220 Finnish homes).
 */
export const vapourAddedFormula: Formula<'g' | 'To' | 'Ti' | 'pn'> = {
  name: 'Humidity that people add',
  result: { tex: 'h_a', meaning: 'relative humidity added, 0 to 1', unit: '' },
  // 0.4615 J/(g K) is the gas constant of water vapour.
  expression: '0.4615 * g * max(0, min(1, (20 - To) / 20)) * ((Ti + To) / 2 + 273.15) / pn',
  symbols: {
    g: { tex: 'g', meaning: 'vapour added at 0 °C outdoors and below', unit: 'g/m³', min: 0, max: 10 },
    To: { tex: 'T_o', meaning: 'temperature outdoors', unit: '°C', min: -60, max: 60 },
    Ti: { tex: 'T_i', meaning: 'temperature indoors', unit: '°C', min: -60, max: 60 },
    pn: { tex: 'p_i', meaning: 'vapour pressure of saturated air at the temperature indoors', unit: 'Pa', min: 0 },
  },
  source:
    'EN ISO 13788, annex on internal boundary conditions (classes and their straight line from memory; pressure from grams as in a published script after it)',
};

/** The numbers that {@link vapourAddedFormula} takes: for its typeset working. */
export function vapourAddedValues(house: {
  livedIn: string;
  outdoorsC: number;
  indoorsC: number;
}): Record<'g' | 'To' | 'Ti' | 'pn', number> {
  const { livedIn, outdoorsC, indoorsC } = house;
  return { g: occupancy(livedIn).addedInTheCold, To: outdoorsC, Ti: indoorsC, pn: saturationPressure(indoorsC) };
}
