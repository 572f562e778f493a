import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { evaluate as calculate } from 'mathjs';
import { expect, it } from 'vitest';
import { compileFormula, evaluate, type Formula } from '../../kernel-helpers/src/measure/formula.js';

const source = join(import.meta.dirname, '../../kernel-helpers/src');
const files = readdirSync(source, { recursive: true, encoding: 'utf8' }).filter(
  (name) => name.endsWith('.ts') && /: (Record<.*)?Formula</.test(readFileSync(join(source, name), 'utf8')),
);
const modules: object[] = await Promise.all(files.map((name) => import(join(source, name))));
const isFormula = (value: unknown): value is Formula =>
  typeof value === 'object' && value !== null && 'expression' in value && 'symbols' in value;
const exported = modules.flatMap((module) => Object.values(module));
const formulas = exported.flatMap((value) =>
  isFormula(value) ? [value] : Object.values(value ?? {}).filter(isFormula),
);

/** A value for each symbol, over the range it holds in, and which of them stay open. */
const worked = ({ symbols }: Formula) =>
  fc.record({
    values: fc.record(
      Object.fromEntries(
        Object.entries(symbols).map(([name, { min = 0, max = min + 100 }]) => [
          name,
          fc.integer({ min: 0, max: 1000 }).map((step) => min + ((max - min) * step) / 1000),
        ]),
      ),
    ),
    over: fc.shuffledSubarray(Object.keys(symbols)),
  });

it('every formula is found', () => {
  expect(formulas.length).toBeGreaterThan(40);
});

it.each(formulas.map((formula) => [`${formula.name}: ${formula.expression}`, formula] as const))('%s', (_, formula) => {
  fc.assert(
    fc.property(worked(formula), ({ values, over }) => {
      const outside = calculate(formula.expression, { ...values });
      // Where the library goes on to complex numbers there is no figure for the bench.
      const figure = typeof outside === 'number' ? outside : Number.NaN;
      expect(evaluate(formula, values)).toBe(figure);
      expect(
        compileFormula<string, object, string[]>(formula, over)(values)(...over.map((name) => values[name] as number)),
      ).toBe(figure);
    }),
  );
});
