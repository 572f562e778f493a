import * as z from 'zod';
import { amount, readParameters } from './parameters.js';

/** What a parameter can be. */
export type ParameterKind = 'text' | 'yesOrNo' | 'list' | 'group' | 'length' | 'number' | 'reading' | 'share' | 'money';

const kinds: Record<ParameterKind, z.ZodType> = {
  text: z.string({ error: "possible: words in quotation marks, '' for none" }),
  yesOrNo: z.boolean({ error: 'possible: true or false, without quotation marks' }),
  list: z.array(z.any(), { error: 'possible: a list in square brackets, [] for none' }),
  group: z.record(z.string(), z.any(), { error: 'possible: named values in braces, such as { length: 3 }' }),
  length: z.union([z.string(), z.number()], { error: "possible: a length such as '3/4 in', '' for none" }),
  number: z.number({ error: 'possible: a number, without quotation marks' }),
  reading: z.union([z.number(), z.literal('')], {
    error: "possible: a number as the meter reads it, '' as an earlier sheet has it",
  }),
  share: amount({ least: 0, most: 1, why: 'a fraction: 20 % is 0.2' }),
  money: amount({ least: 0, most: 1e7, why: 'whole currency units: nothing is paid with less than nothing' }),
};

/**
 * Refuses values of a kind that a sheet cannot work with, by the names that the sheet itself gives them, before anything is
 * worked out: text where yes or no belongs would count as yes, and a list would be read letter by letter.
 *
 * @param parameters  as they stand in the sheet
 * @param expected  names of parameters by kind; a parameter that a helper reads by the same name needs none
 * @throws ShopError  one line: the parameter, the value given, what is possible
 */
export function checkParameters<P extends object>(
  parameters: P,
  expected: { [kind in ParameterKind]?: (keyof P & string)[] },
): void {
  const fields = Object.entries(expected).flatMap(([kind, names]) =>
    names.map((name) => [name, kinds[kind as ParameterKind]] as const),
  );
  readParameters(z.object(Object.fromEntries(fields)), parameters);
}
