/**
 * Works out TeX made of numbers, as a reader with a pocket calculator would: fractions, roots, powers, products, sums.
 * Written for the tests alone, so that it cannot share a mistake with what sets the TeX.
 */
export function readTex(tex: string): number {
  const tokens = tex.match(/\d+(?:\.\d+)?|\\[a-zA-Z]+|\\.|[-+()^{}e,/]/g) ?? [];
  let at = 0;
  const peek = () => tokens[at];
  const take = (expected?: string): string => {
    const token = tokens[at++];
    if (token === undefined || (expected !== undefined && token !== expected))
      throw new Error(`TeX: ${expected ?? 'something'} expected, ${token} found in ${tex}`);
    return token;
  };

  function sum(): number {
    const negative = peek() === '-';
    if (negative) take();
    let value = negative ? -product() : product();
    while (peek() === '+' || peek() === '-') value += take() === '+' ? product() : -product();
    return value;
  }

  function product(): number {
    let value = power();
    for (;;) {
      const next = peek();
      if (next === '\\times') {
        take();
        value *= power();
      } else if (next === '/') {
        take();
        value /= power();
      } else if (next === '\\,') {
        take();
        value *= power();
      } else return value;
    }
  }

  function power(): number {
    const base = atom();
    if (peek() !== '^') return base;
    take();
    return base ** group();
  }

  function group(): number {
    take('{');
    const value = sum();
    take('}');
    return value;
  }

  function brackets(): number[] {
    if (peek() === '\\left' || peek() === '\\biggl') take();
    take('(');
    const values = [sum()];
    while (peek() === ',') {
      take();
      values.push(sum());
    }
    if (peek() === '\\right' || peek() === '\\biggr') take();
    take(')');
    return values;
  }

  function called(run: (...values: number[]) => number): number {
    if (peek() !== '^') return run(...brackets());
    take();
    const exponent = group();
    return run(...brackets()) ** exponent;
  }

  function atom(): number {
    const token = peek();
    if (token === '(' || token === '\\left' || token === '\\biggl') return brackets()[0] as number;
    take();
    if (token === '\\frac') return group() / group();
    if (token === '\\sqrt') return Math.sqrt(group());
    if (token === '\\pi') return Math.PI;
    if (token === '\\max') return called(Math.max);
    if (token === '\\min') return called(Math.min);
    if (token === '\\sin') return called(Math.sin);
    if (token === '\\ln') return called(Math.log);
    if (token === '\\exp') return called(Math.exp);
    if (token === 'e') {
      take('^');
      return Math.exp(group());
    }
    const value = Number(token);
    if (Number.isNaN(value)) throw new Error(`TeX: a number expected, ${token} found in ${tex}`);
    return value;
  }

  const value = sum();
  if (at < tokens.length) throw new Error(`TeX: nothing expected after ${tokens.slice(0, at).join(' ')} in ${tex}`);
  return value;
}
