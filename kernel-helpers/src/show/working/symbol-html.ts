import { escapeHtml } from '../kit/escape.js';

const signs: Record<string, string> = {
  alpha: 'α',
  beta: 'β',
  gamma: 'γ',
  delta: 'δ',
  epsilon: 'ε',
  eta: 'η',
  theta: 'θ',
  kappa: 'κ',
  lambda: 'λ',
  mu: 'μ',
  nu: 'ν',
  pi: 'π',
  rho: 'ρ',
  sigma: 'σ',
  tau: 'τ',
  phi: 'φ',
  varphi: 'φ',
  omega: 'ω',
  Gamma: 'Γ',
  Delta: 'Δ',
  Theta: 'Θ',
  Lambda: 'Λ',
  Sigma: 'Σ',
  Phi: 'Φ',
  Omega: 'Ω',
  ',': '\u2009',
  ' ': ' ',
  '%': '%',
  prime: '′',
};

/** Signs over a letter, as characters that combine with it. */
const accents: Record<string, string> = { bar: '\u0304', hat: '\u0302', tilde: '\u0303', dot: '\u0307' };

/**
 * A symbol's TeX as HTML: italic letters, subscripts, Greek. For lists beside a formula, where a notebook sets no TeX.
 *
 * @example symbolHtml('\\Delta M_f') // 'Δ<i>M</i><sub><i>f</i></sub>'
 */
export function symbolHtml(tex: string): string {
  const tokens = tex.match(/\\[a-zA-Z]+\s*|\\.|[\s\S]/gu) ?? [];
  let at = 0;

  function group(upright: boolean): string {
    if (tokens[at] !== '{') return at < tokens.length ? one(upright) : '';
    at++;
    let html = '';
    while (at < tokens.length && tokens[at] !== '}') html += one(upright);
    at++;
    return html;
  }

  function one(upright: boolean): string {
    const token = tokens[at++] as string;
    if (token === '_') return `<sub>${group(upright)}</sub>`;
    if (token === '^') return `<sup>${group(upright)}</sup>`;
    if (token === '{') {
      at--;
      return group(upright);
    }
    if (token.startsWith('\\')) {
      const name = token.slice(1).trim() || ' ';
      if (/^(mathrm|text|operatorname)$/.test(name)) return group(true);
      if (accents[name]) return group(upright).replace(/(?<=^|>)\p{L}/u, (letter) => letter + accents[name]);
      return escapeHtml(signs[name] ?? name);
    }
    if (token === '}') return '';
    if (token === "'") return '′';
    return /\p{L}/u.test(token) && !upright ? `<i>${escapeHtml(token)}</i>` : escapeHtml(token);
  }

  let html = '';
  while (at < tokens.length) html += one(false);
  return html.replaceAll('</i><i>', '');
}
