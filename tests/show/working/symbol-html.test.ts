import { expect, it } from 'vitest';
import { symbolHtml } from '../../../kernel-helpers/src/show/working/symbol-html.js';

it.each([
  ['D', '<i>D</i>'],
  ['\\Delta D', 'Δ<i>D</i>'],
  ['M_f', '<i>M</i><sub><i>f</i></sub>'],
  ['K_1', '<i>K</i><sub>1</sub>'],
  ['t_{\\mathrm{lid}}', '<i>t</i><sub>lid</sub>'],
  ['\\bar t', '<i>t\u0304</i>'],
  ["x'", '<i>x</i>′'],
  ['<b', '&lt;<i>b</i>'],
  ['a}b{', '<i>ab</i>'],
])('the symbol %s reads the same in a list as in the formula', (tex, html) => {
  expect(symbolHtml(tex)).toBe(html);
});
