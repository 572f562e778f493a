import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import * as z from 'zod';
import { readJsonFile } from '../../kernel-helpers/src/disk/json-file.js';
import { amount, readParameters, size, words } from '../../kernel-helpers/src/measure/parameters.js';
import { testFolder } from '../record/setting.js';

const fields = z.strictObject({
  maker: words('who offers'),
  kerf: size({ least: 0.01, most: 0.5, why: 'what the saw takes' }),
  planer: z.strictObject({ widest: size({ least: 3, most: 30, why: 'its widest board' }) }),
  bits: z.array(z.strictObject({ angle: amount({ least: 30, most: 120, why: 'of its point' }) })),
});
const shop = `{
  "maker": "The maker",
  "kerf": "1/8 in",
  "planer": { "widest": "12 in" },
  "bits": [
    { "angle": 60 },
    { "angle": 90 }
  ]
}
`;
const read = (text: string) => {
  const file = join(testFolder(), 'shop.json');
  writeFileSync(file, text);
  return readJsonFile(file, { read: (content) => readParameters(fields, content), possible: '{ "kerf": "1/8 in" }' });
};

describe('a file that the maker writes', () => {
  it('is read, and need not be there', () => {
    expect(read(shop)).toMatchObject({ kerf: 0.125, bits: [{ angle: 60 }, { angle: 90 }] });
    expect(readJsonFile(join(testFolder(), 'none.json'), { read: () => 'something', possible: '{}' })).toBeUndefined();
  });

  it.each([
    ['"1/8 in"', '"wide"', /shop\.json, line 3, kerf: "wide" given; not a length .*; possible: 1\/64 in/],
    ['"12 in"', '"12 ft"', /shop\.json, line 4, planer, widest: "12 ft" given; .*possible: 3 in to 30 in/],
    [
      '"angle": 90',
      '"angle": "wide"',
      /shop\.json, line 7, bits no\. 2, angle: "wide" given; possible: a number from 30/,
    ],
    ['"kerf": "1/8 in",', '', /shop\.json, line 1, kerf: nothing given; possible/],
    ['"kerf"', '"kref"', /shop\.json, line 3, kref: there is no such parameter; the nearest is kerf$/],
  ])('%s as %s is named with file, line and field', (from, to, message) => {
    expect(() => read(shop.replace(from, to))).toThrow(message);
  });

  it.each([
    ['"The maker",', '"The maker"', /line 2: a comma is missing before "kerf"/],
    ['"1/8 in"', '1/8 in', /line 3: \/8 is not expected here: lengths stand in "quotation marks"/],
    ['"1/8 in"', "'1/8 in'", /line 3: '1\/8.* given; quotation marks here are ", straight and double/],
    ['"1/8 in"', '“1/8 in”', /line 3: “1\/8.* given; quotation marks here are ", straight and double/],
    ['{ "angle": 90 }', '{ "angle": 90 },', /line 7: the comma before \] is one too many/],
    ['"kerf":', 'kerf:', /line 3: kerf: is not expected here: texts stand in "quotation marks"/],
    ['"kerf":', '// saw\n"kerf":', /line 3: notes such as \/\/ are not possible here/],
    ['  ]\n}\n', '  ]\n', /line 8: it ends too early: a } or \] is missing/],
    [shop, '', /line 1: it is empty/],
    [shop, '{', /line 1: it ends too early/],
    [shop, '{ "a":\n', /line 1: it ends too early/],
  ])('%j as %j is named with file, line and slip, and what is possible', (from, to, message) => {
    const text = shop.replace(from, to);
    expect(() => read(text)).toThrow(message);
    expect(() => read(text)).toThrow(/^[\w-]+\/shop\.json, line \d.*; possible: \{ "kerf": "1\/8 in" \}$/);
  });
});
