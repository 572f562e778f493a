import fc from 'fast-check';
import temml from 'temml';
import { describe, expect, it } from 'vitest';
import { evaluate, type Formula } from '../../../kernel-helpers/src/measure/formula.js';
import { parseLength } from '../../../kernel-helpers/src/measure/length.js';
import { markupFormula, priceFormula } from '../../../kernel-helpers/src/money/quote.js';
import { numberText } from '../../../kernel-helpers/src/show/kit/number-text.js';
import { working } from '../../../kernel-helpers/src/show/working/working.js';
import { emcConstants, emcFormula, emcValues } from '../../../kernel-helpers/src/wood/emc.js';
import { coefficientFormula, shrinkageFormula } from '../../../kernel-helpers/src/wood/movement.js';
import { readTex } from '../read-tex.js';

/** What a reader sees of a worked formula, line by line. */
function read(shown: ReturnType<typeof working>) {
  const tex = shown[0]?.text ?? '';
  const lines = tex
    .replace(/^\$\$\\begin\{aligned\}\n|\n\\end\{aligned\}\$\$$/g, '')
    .replaceAll(' \\\\\n&\\quad {}', ' ')
    .split(' \\\\\n');
  const result = /^&(?:=|\\approx) (-?[\d.]+(?: \\times 10\^\{-?\d+\})?)(.*)$/.exec(lines.at(-1) ?? '');
  return {
    tex,
    inNumbers: lines.length > 2 ? (lines[1] ?? '').replace(/^&= /, '') : undefined,
    result: readTex(result?.[1] ?? ''),
    resultText: result?.[1],
    after: result?.[2] ?? '',
    list: (shown[1]?.text ?? '').replaceAll('\u00a0', ' '),
  };
}

const lidMovement = { D: 6.6563, C: 0.0026417, Mi: 8, Mf: 11.0037 };

describe('a worked formula', () => {
  it('shows symbols, then the numbers put in, then the result with its unit', () => {
    const [math] = working(coefficientFormula, { D: 9.25, C: 0.00248, Mi: 8, Mf: 12 });
    expect(math?.mime).toBe('text/latex');
    expect(math?.text).toBe(
      [
        '$$\\begin{aligned}',
        '\\Delta D &= D \\, C \\, (M_f - M_i) \\\\',
        '&= 9.25 \\times 0.00248 \\times (12 - 8) \\\\',
        '&= 0.09176\\ \\mathrm{in}',
        '\\end{aligned}$$',
      ].join('\n'),
    );
  });

  it('shows a result that reads back as the computed one, to its last figure', () => {
    const { result, tex } = read(working(coefficientFormula, lidMovement, { digits: 3 }));
    const computed = evaluate(coefficientFormula, lidMovement);
    expect(Math.abs(result - computed)).toBeLessThanOrEqual(0.5e-4);
    expect(tex).toContain('\\approx 0.0528');
  });

  it('lets a reader come to the shown result from the shown numbers', () => {
    const percent = fc.double({ min: 6, max: 14, noNaN: true });
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 30, noNaN: true }),
        fc.double({ min: 0.0005, max: 0.005, noNaN: true }),
        percent,
        percent,
        fc.integer({ min: 2, max: 6 }),
        (D, C, Mi, Mf, digits) => {
          const shown = read(working(coefficientFormula, { D, C, Mi, Mf }, { digits }));
          const redone = readTex(shown.inNumbers ?? '');
          const figures = Math.max(1, (shown.resultText ?? '').replace(/ .*|[-.]/g, '').replace(/^0+/, '').length);
          expect(Number(redone.toPrecision(figures))).toBeCloseTo(shown.result, 12);
          const computed = evaluate(coefficientFormula, { D, C, Mi, Mf });
          expect(Number(computed.toPrecision(figures))).toBeCloseTo(shown.result, 12);
        },
      ),
    );
  });

  it('shows no more figures than that takes', () => {
    const { inNumbers, list } = read(working(coefficientFormula, { ...lidMovement, D: 6.656312345678 }, { digits: 3 }));
    expect(inNumbers).toContain('6.656 \\times');
    expect(list).toContain('6.656 in');
  });

  it('holds for the long formulas of the handbook too, broken over lines where they are wide', () => {
    const air = emcValues({ temperatureC: 21.3, relativeHumidity: 0.47 });
    for (const [formula, values] of [
      [emcFormula, air],
      [emcConstants.K, { T: 21.3 }],
      [shrinkageFormula, { D: 6.6875, S: 7.8, M0: 30, Mi: 8.123, Mf: 5.5 }],
      [priceFormula, { K: 850.5, m: 0.2 }],
    ] as [Formula, Record<string, number>][]) {
      const { inNumbers, result } = read(working(formula, values));
      expect(numberText(readTex(inNumbers ?? ''))).toBe(numberText(result));
    }
    expect(working(emcFormula, air)[0]?.text).toContain('&\\quad {}+ \\frac');
  });

  it('says how far the tape reading is from the computed one', () => {
    const computed = evaluate(coefficientFormula, { D: 9.25, C: 0.00248, Mi: 8, Mf: 12 });
    const shown = read(working(coefficientFormula, { D: 9.25, C: 0.00248, Mi: 8, Mf: 12 }, { lengths: 'tape' }));
    expect(shown.after).toContain('\\approx \\tfrac{3}{32}\\ \\mathrm{in}');
    expect(shown.list).toContain('3/32 in is 0.00199 in more than computed.');
    expect(parseLength('3/32') - computed).toBeCloseTo(0.00199, 6);
  });

  it('does not say the same length twice when the tape shows it in full', () => {
    const sum: Formula<'a' | 'b'> = {
      name: 'Sum',
      result: { tex: 'L', meaning: 'length', unit: 'in' },
      expression: 'a + b',
      symbols: { a: { meaning: 'one', unit: 'in', min: 0 }, b: { meaning: 'other', unit: 'in', min: 0 } },
      source: 'definition',
    };
    expect(read(working(sum, { a: 9.5, b: 1.5 }, { lengths: 'both' })).tex).toContain(
      '&= 11\\ \\mathrm{in}\\ (279.4\\ \\mathrm{mm})\n',
    );
    expect(read(working(sum, { a: 9.5, b: 1.25 }, { lengths: 'tape' })).tex).toContain(
      '&= 10.75\\ \\mathrm{in} = 10\\tfrac{3}{4}\\ \\mathrm{in}\n',
    );
  });

  it('brackets a negative number, escapes the percent sign and sets units upright', () => {
    const { tex } = read(working({ ...emcConstants.K, result: { tex: 'K', meaning: 'k', unit: '%' } }, { T: -10 }));
    expect(tex).toContain('(-10)^{2}');
    expect(tex).toContain('\\,\\%');
    const degrees = working({ ...emcConstants.K, result: { tex: 'T', meaning: 't', unit: '°C' } }, { T: 10 });
    expect(degrees[0]?.text).toContain('\\ \\mathrm{^{\\circ}C}');
  });

  it('uses only commands that MathJax 2.7, MathJax 3, KaTeX and Temml all know, and Temml sets it', () => {
    const all = [
      working(emcFormula, emcValues({ temperatureC: 20, relativeHumidity: 0.5 })),
      working(coefficientFormula, lidMovement, { lengths: 'both' }),
      working(markupFormula, { m: 0.2 }),
    ];
    const known =
      /^\\(begin|end|Delta|mathrm|mathit|bar|frac|tfrac|times|left|right|biggl|biggr|approx|quad|circ|pi|sin|cos|tan|arctan|ln|max|min|sqrt)$/;
    for (const [math] of all) {
      const commands = math?.text.match(/\\[a-zA-Z]+/g) ?? [];
      expect(commands.filter((command) => !known.test(command))).toEqual([]);
      expect(temml.renderToString(math?.text.slice(2, -2) ?? '', { throwOnError: true, displayMode: true })).toContain(
        '<mtable',
      );
    }
  });

  it('lists what each symbol means, its value with unit, its range and the source', () => {
    const { list } = read(working(coefficientFormula, lidMovement));
    expect(list).toContain('<i>M</i><sub><i>f</i></sub>');
    expect(list).toContain('moisture content at the end');
    expect(list).toContain('6 to 14 %');
    expect(list).toContain('Source: Wood Handbook FPL-GTR-190 (2010), eq. 13-2');
  });

  it('refuses what the formula refuses', () => {
    expect(() => working(coefficientFormula, { ...lidMovement, Mi: 2 })).toThrow(
      'moisture content at the start: 2 % given; possible: from 6 up to 14 %',
    );
  });
});
