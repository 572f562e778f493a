import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { placeText } from '../../kernel-helpers/src/measure/refused/refused.js';
import { ShopError } from '../../kernel-helpers/src/measure/shop-error.js';
import { sheetInProcess } from './sheet-in-process.js';

const worksheets = join(import.meta.dirname, '..', '..', 'worksheets');
const names = ['commission', 'pieces'].flatMap((folder) =>
  readdirSync(join(worksheets, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ipynb') && !name.includes('.ipynb_checkpoints'))
    .map((name) => join(folder, name)),
);

type Way = (string | number)[];

/** Every single value among the parameters; of the entries of a list, those of the last. */
function singles(value: object, path: Way = []): [Way, unknown][] {
  const entries = Array.isArray(value) ? [...value.entries()].slice(-1) : Object.entries(value);
  return entries.flatMap(([key, each]) =>
    typeof each === 'object' && each && Object.keys(each).length > 0
      ? singles(each, [...path, key])
      : [[[...path, key], each] as [Way, unknown]],
  );
}

function changed(parameters: object, path: Way, value: unknown): object {
  const copy = structuredClone(parameters);
  const holder = path
    .slice(0, -1)
    .reduce<Record<string | number, unknown>>((here, key) => here[key] as never, copy as never);
  holder[path.at(-1) as string | number] = value;
  return copy;
}

/** What a parameter of this kind can hardly be. */
const out = { number: -7777, string: '7777 ft', boolean: 'no', object: 7777 } as const;

test.each(names)('%s refuses what cannot be by its own names for it', async (name) => {
  const { parameters, run } = sheetInProcess(join(worksheets, name));
  await run(parameters);
  let refused = 0;
  for (const [path, value] of singles(parameters)) {
    const given = changed(parameters, path, out[typeof value as keyof typeof out]);
    const error: unknown = await run(given).then(
      () => undefined,
      (thrown) => thrown,
    );
    // Words of the maker's own can be anything, and so can what this piece has no use for.
    if (error === undefined) continue;
    refused += 1;
    expect(error).toBeInstanceOf(ShopError);
    expect(
      (error as ShopError).inSheet(given).startsWith(`${placeText(path)}: `),
      `${(error as ShopError).inSheet(given)}`,
    ).toBe(true);
  }
  expect(refused).toBeGreaterThan(0);
});
