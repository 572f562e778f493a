import * as z from 'zod';
import data from '../../../../data/usual-shop.json';
import { amount, count, known, oneOf, readParameters, size, words } from '../../measure/parameters.js';
import { ShopError } from '../../measure/shop-error.js';
import type { Correction } from '../../money/correction.js';
import { finish } from '../../surface/finish/finishes.js';
import { glue } from '../../surface/finish/glues.js';
import { shopAirFields } from '../../wood/air/shop-air.js';

/** A length as it is typed, `1/8 in` or `3 mm`, or inches. */
export type TypedLength = string | number;

/** What is true of the shop and not of one commission, as its maker typed it. */
export interface ShopCard {
  /** Name and address, a line each: who offers, and signs the receipt. */
  maker: string[];
  /** How lengths are shown. */
  units: 'tape' | 'mm' | 'both';
  /** ISO 4217 code; whole units of it: pay for an hour, what a year costs, and the hours of it that clients pay for. */
  currency: string;
  hourlyRate: number;
  overheadPerYear: number;
  billableHoursPerYear: number;
  /** Parts of a whole: for what goes wrong, profit over the net price, tax, what is paid at the order. */
  contingency: number;
  margin: number;
  taxName: string;
  taxRate: number;
  taxInside: boolean;
  deposit: number;
  /** Days that a quote holds. */
  validDays: number;
  /** Carton and padding; glue, abrasives and finish: for a piece. */
  packing: number;
  glueAndFinish: number;
  /** How far whole pieces go slower or faster than estimated, a part of a whole; corrections of single operations, from the shop book. */
  pace: number;
  corrections: Pick<Correction, 'operation' | 'factor' | 'because'>[];
  /** Hours at the bench on each day of the week; days off as `2026-12-24/2027-01-02`; days that parts rest after the first cuts. */
  hours: Record<string, number>;
  closed: string[];
  rest: number;
  /** The shop's own air, °C and 0 to 1. */
  air: { shopTemperatureC: number; shopHumidity: number };
  /** Nine readings of the meter in ten are this close, points of moisture. */
  meterError: number;
  /** Ids of the glue at corners and of the one for panels; minutes to spread a joint, and what one clamp gives, lb. */
  glue: string;
  panelGlue: { glue: string; minutesPerJoint: number; clampForce: number };
  /** Id of the usual finish, and its coats. */
  finish: string;
  coats: number;
  /** Grades kept, and the first and the last used outside. */
  grits: string[];
  sandFrom: string;
  sandTo: string;
  /** What the machine saw and the dovetail saw take. */
  kerf: TypedLength;
  handSawKerf: TypedLength;
  /** Off both ends of every board; off the edges of a sheet. */
  endTrim: TypedLength;
  sheetEdge: TypedLength;
  /** Left on a blank: over length, over width, off both faces of a board whose bend was not measured and of a straight one. */
  lengthAllowance: TypedLength;
  widthAllowance: TypedLength;
  thicknessAllowance: TypedLength;
  cleanFaces: TypedLength;
  /** Left on a panel until it is flattened, and what jointing takes of each of its joints. */
  panels: { panelWidth: TypedLength; panelThickness: TypedLength; jointing: TypedLength };
  /** What the machines take: from their manuals. */
  planer: {
    leastLength: TypedLength;
    leastWidth: TypedLength;
    leastThickness: TypedLength;
    widest: TypedLength;
    snipeLength: TypedLength;
    snipeDepth: TypedLength;
  };
  jointer: { leastLength: TypedLength; widest: TypedLength };
  tableSaw: { leastLength: TypedLength; leastWidth: TypedLength };
  router: { machine: string; leastLength: TypedLength; leastWidth: TypedLength };
  /** Bits by diameter: straight ones; the cutter or blade of finger joints; the V-bit with its angle in degrees and the length it cuts a minute; the core-box bit. */
  straightBits: TypedLength[];
  fingerCutter: TypedLength;
  vBit: { bitAngle: number; bitDiameter: TypedLength; feed: TypedLength };
  coreBoxDiameter: TypedLength;
  /** Longest that a cut plan is looked for, seconds. */
  planSeconds: number;
}

const share = (why: string) => amount({ least: 0, most: 1, why: `${why}: a fraction, 20 % is 0.2` });
const money = (why: string) => amount({ least: 0, most: 1e7, why: `${why}, whole units of the currency` });
const length = (least: number, most: number, why: string) => size({ least, most, why });
const listOf = (each: z.ZodType, what: string) => z.array(each, { error: `possible: a list of ${what}` });
const text = (why: string) => z.string({ error: `possible: text (${why})` });

const group = (fields: Record<string, z.ZodType>) =>
  z.strictObject(fields, {
    error: ({ code }) =>
      code === 'invalid_type' ? `possible: named values in braces: ${Object.keys(fields).join(', ')}` : undefined,
  });

/** What each field of a card can be. Machines, glues and grits are looked at again where they are used. */
const fields = {
  maker: listOf(text('a line of name and address'), 'lines: name and address'),
  units: oneOf(['tape', 'mm', 'both'], 'how lengths are shown'),
  currency: z
    .string({ error: 'possible: an ISO 4217 code such as USD' })
    .length(3, 'possible: an ISO 4217 code such as USD'),
  hourlyRate: money('pay for an hour'),
  overheadPerYear: money('rent, power, insurance, machines: a year'),
  billableHoursPerYear: amount({ least: 1, most: 4000, unit: 'h', why: 'hours a year that clients pay for' }),
  contingency: share('for what goes wrong'),
  margin: amount({ least: 0, most: 0.95, why: 'profit over the net price: a fraction, 20 % is 0.2' }),
  taxName: text('what the tax is called'),
  taxRate: share('tax'),
  taxInside: z.boolean({ error: 'possible: true (the round price holds the tax) or false (it comes on top)' }),
  deposit: share('paid at the order'),
  validDays: count({ least: 1, most: 365, what: 'days that a quote holds' }),
  packing: money('carton and padding'),
  glueAndFinish: money('glue, abrasives, finish'),
  pace: share('how far whole pieces go slower or faster'),
  corrections: listOf(z.looseObject({}, { error: 'possible: lines from the shop book' }), 'lines from the shop book'),
  hours: z.record(z.string(), amount({ least: 0, most: 16, unit: 'h', why: 'hours at the bench that day' }), {
    error: 'possible: hours by day of the week, { monday: 3, tuesday: 3 }',
  }),
  closed: listOf(text('2026-12-25, or 2026-12-24/2027-01-02'), 'days off, such as 2026-12-24/2027-01-02'),
  rest: amount({ least: 0, most: 60, unit: 'days', why: 'parts rest stickered after the first cuts' }),
  air: group(shopAirFields.shape),
  meterError: amount({ least: 0, most: 5, unit: '%', why: 'nine readings of the meter in ten are this close' }),
  glue: known(glue, 'the glue at corners'),
  panelGlue: group({
    glue: known(glue, 'the glue of panels'),
    minutesPerJoint: amount({ least: 0.1, most: 60, unit: 'min', why: 'to spread and close one edge joint' }),
    clampForce: amount({ least: 100, most: 20_000, unit: 'lb', why: 'what one clamp gives' }),
  }),
  finish: known(finish, 'the usual finish'),
  coats: count({ least: 1, most: 10, what: 'coats' }),
  grits: listOf(words('a grade such as P120'), 'grades, such as P120'),
  sandFrom: words('a grade such as P120'),
  sandTo: words('a grade such as P220'),
  kerf: length(1 / 64, 0.5, 'what the saw takes'),
  handSawKerf: length(0, 0.25, 'what the dovetail saw takes'),
  endTrim: length(0, 12, 'off both ends of every board'),
  sheetEdge: length(0, 6, 'off the edges of a sheet'),
  lengthAllowance: length(0, 6, 'over length at the rough crosscut'),
  widthAllowance: length(0, 2, 'over width at the rough rip'),
  thicknessAllowance: length(0, 2, 'off both faces of a board whose bend was not measured'),
  cleanFaces: length(0, 1, 'off both faces of a straight board'),
  panels: group({
    panelWidth: length(0, 2, 'left on the width of a glued-up panel'),
    panelThickness: length(0, 1, 'and on its thickness, to be flattened'),
    jointing: length(0, 1, 'what jointing takes of a joint, both edges together'),
  }),
  planer: group({
    leastLength: length(1, 60, 'shortest piece the planer takes'),
    leastWidth: length(0, 12, 'narrowest'),
    leastThickness: length(0.03125, 2, 'thinnest'),
    widest: length(2, 60, 'widest'),
    snipeLength: length(0, 12, 'how far the planer dips at an end'),
    snipeDepth: length(0, 0.25, 'how deep'),
  }),
  jointer: group({
    leastLength: length(1, 60, 'shortest piece the jointer takes'),
    widest: length(1, 40, 'widest'),
  }),
  tableSaw: group({
    leastLength: length(1, 60, 'shortest piece ripped by hand against the fence'),
    leastWidth: length(0, 12, 'narrowest'),
  }),
  router: group({
    machine: oneOf(['router table', 'hand router', 'carving machine'], 'what turns the bit of grooves'),
    leastLength: length(1, 36, 'shortest board fed by hand at the router table'),
    leastWidth: length(0.25, 12, 'narrowest'),
  }),
  straightBits: listOf(length(1 / 32, 2, 'diameter of a straight bit'), 'diameters of straight bits').min(
    1,
    'possible: at least one diameter',
  ),
  fingerCutter: length(1 / 32, 1, 'width of the blade or cutter for finger joints'),
  vBit: group({
    bitAngle: amount({ least: 10, most: 170, unit: 'degrees', why: 'angle of the point' }),
    bitDiameter: length(1 / 16, 2, 'its largest diameter'),
    feed: length(1, 1000, 'length of cut a minute'),
  }),
  coreBoxDiameter: length(1 / 8, 3, 'diameter of the core-box bit'),
  planSeconds: amount({ least: 0.1, most: 3600, unit: 's', why: 'longest that a cut plan is looked for' }),
} satisfies { [field in keyof ShopCard]: z.ZodType };

const schema = z.strictObject(fields);

/** The figures that a shop begins with. @see data/usual-shop.json: common practice, no source */
export function usualShop(): ShopCard {
  return readShopCard({});
}

/**
 * A shop card as it was typed: each field looked at, none changed; a field that it does not have is the usual one.
 *
 * @param typed  the maker's own
 * @throws ShopError  one line: the field, the value given, what is possible, why
 */
export function readShopCard(typed: unknown): ShopCard {
  readParameters(z.record(z.string(), z.unknown(), { error: 'possible: fields of a shop card in braces' }), typed);
  const card = { ...structuredClone(data.card), ...(typed as object) };
  readParameters(schema, card);
  return card as ShopCard;
}

/**
 * The card with other values for one commission: a value in braces takes its place field by field.
 *
 * @param own  such as `{ kerf: '3/32 in', router: { machine: 'hand router' } }`
 * @throws ShopError  as {@link readShopCard}
 */
export function withOwn(usual: ShopCard, own: object): ShopCard {
  if (typeof own !== 'object' || own === null || Array.isArray(own))
    throw new ShopError(
      `shop: ${JSON.stringify(own)} given; possible: {}, or fields of the shop card in braces, such as { kerf: '3/32 in' }`,
    );
  const card = { ...usual, ...own } as Record<string, unknown>;
  for (const [field, value] of Object.entries(own)) {
    const group = (usual as unknown as Record<string, unknown>)[field];
    if (isGroup(group) && isGroup(value)) card[field] = { ...group, ...value };
  }
  // A misspelt field is told by its nearest, any other by its place in `shop`.
  const misspelt = Object.keys(own).some((field) => !Object.hasOwn(fields, field));
  if (misspelt) readParameters(schema, card);
  readParameters(z.object({ shop: schema }), { shop: card });
  return card as unknown as ShopCard;
}

const isGroup = (value: unknown): value is object =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
