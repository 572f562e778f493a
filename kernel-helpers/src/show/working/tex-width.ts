/** About how many characters wide TeX is when it is set: a fraction counts as its wider half. */
export function texWidth(tex: string): number {
  const tokens = tex.match(/\\[a-zA-Z]+|\\.|\S/g) ?? [];
  let at = 0;

  function group(): number {
    if (tokens[at] !== '{') return one();
    at++;
    let width = 0;
    while (at < tokens.length && tokens[at] !== '}') width += one();
    at++;
    return width;
  }

  function one(): number {
    const token = tokens[at++] ?? '';
    if (token === '\\frac') return Math.max(group(), group());
    if (token === '{') {
      at--;
      return group();
    }
    if (token === '_' || token === '^') return 0.7 * group();
    if (/^[-+]$|^\\times$/.test(token)) return 2;
    if (/^\\(,|left|right|biggl|biggr|mathrm|mathit|text|operatorname)$/.test(token)) return 0;
    return /^\\[a-z]{3,}/.test(token) && !/^\\(lceil|rceil|circ)/.test(token) ? 2.5 : 1;
  }

  let width = 0;
  while (at < tokens.length) width += one();
  return width;
}
