import * as z from 'zod';
import { count, known, readParameters } from '../../measure/parameters.js';
import { allMoistureExcluding, type MoistureExcluding } from '../../wood/drying/moisture-excluding.js';
import { finish } from './finishes.js';

/** A finish and its coats; `none` and 0 for bare wood. */
export interface Coating {
  finish: string;
  coats: number;
}

const fields = z.strictObject({
  finish: known((id) => (id === 'none' ? { id } : finish(id)), 'type of finish; none for bare wood'),
  coats: count({ least: 0, most: 10, what: 'coats' }),
});

/**
 * The finish of a piece as it is typed, and what was published nearest to it.
 *
 * @param typed.finish  id of data/finishes.json, or `none`; empty for the usual one
 * @param typed.coats  empty for the usual number: the shop's of its usual finish, else the finish's own
 * @param usual  the shop's
 * @returns with `tested`: finish and coats in the published test of moisture, nearest in coats; empty where nothing is published
 * @throws ShopError  one line: the field, the value given, what is possible, why
 */
export function readCoating(
  typed: { finish: string; coats: number | string },
  usual: Coating,
): Coating & { tested: string } {
  const given = typed.finish === '' ? usual.finish : typed.finish;
  const ofFinish = () => (given === usual.finish ? usual.coats : finish(given).coats);
  const read = readParameters(fields, { finish: given, coats: 1 }).finish;
  if (read === 'none') return { finish: read, coats: 0, tested: '' };
  const { coats } = readParameters(fields, { finish: given, coats: typed.coats === '' ? ofFinish() : typed.coats });
  return { finish: read, coats, tested: testedNearest(read, coats)?.id ?? '' };
}

/** What the published test of moisture has of a finish in coats, nearest in their number; undefined where it has none. @internal */
export function testedNearest(id: string, coats: number): MoistureExcluding | undefined {
  const { moistureExcluding } = finish(id);
  if (moistureExcluding === null) return undefined;
  return allMoistureExcluding()
    .filter((tested) => tested.application === 'coats' && tested.id.startsWith(`${moistureExcluding}-`))
    .sort((a, b) => Math.abs(a.coats - coats) - Math.abs(b.coats - coats))[0];
}
