import { describe, expect, it } from 'vitest';
import type { Entry } from '../../../kernel-helpers/src/record/chain/entry.js';
import type { DisplayItem } from '../../../kernel-helpers/src/show/kit/display.js';
import { figure } from '../../../kernel-helpers/src/show/kit/figure.js';
import { table } from '../../../kernel-helpers/src/show/kit/table.js';
import { type CommissionPage, commissionPage } from '../../../kernel-helpers/src/show/page/commission-page.js';
import { cautions } from '../../../kernel-helpers/src/show/tables/cautions.js';
import { findingList } from '../../../kernel-helpers/src/show/tables/finding-list.js';
import { working } from '../../../kernel-helpers/src/show/working/working.js';
import { coefficientFormula } from '../../../kernel-helpers/src/wood/movement.js';
import { dangerous, elementsOf, readHtml } from '../read-html.js';

const lines = (text: string) => text.split(/(?<=\n)/);
const prose = (source: string, more = {}) => ({ cell_type: 'markdown', source: lines(source), ...more });
const code = (source: string, ...outputs: object[]) => ({
  cell_type: 'code',
  source: lines(source),
  metadata: {},
  outputs: outputs as { output_type: string }[],
});
const display = ({ mime, text }: DisplayItem) => ({
  output_type: 'display_data',
  data: { [mime]: lines(text) },
  metadata: {},
});
const html = (text: string) => ({ output_type: 'display_data', data: { 'text/html': text } });

const entry = (seq: number, what: string): Entry => ({
  seq,
  at: `2026-11-25T1${seq}:00:00-05:00`,
  who: 'maker',
  what,
  needs: seq > 1 ? { brief: { seq: 1, hash: '1'.repeat(64) } } : {},
  inputs: {},
  results: {},
  findings: [],
  overrides: {},
  versions: { node: '20.20.2', tslab: '1.0.22', helpers: '0.1.0', build: 'b'.repeat(64), data: {} },
  prev: String(seq - 1).repeat(64),
  hash: String(seq).repeat(64),
});

const commission: CommissionPage = {
  title: 'Tea chest',
  client: 'R. Example',
  date: '2026-11-25',
  sheets: [
    {
      name: '01-brief',
      notebook: {
        cells: [
          prose('# 01 The brief\n\nInside it is $9\\tfrac{1}{2}$ in, and a line is\n\n$$a^2 + b^2$$\n'),
          {
            ...code(
              "const parameters = {\n  insideLength: '9 1/2 in', // the way the lid slides\n  shopTemperatureC: 19, // by the stack\n};",
            ),
            metadata: { tags: ['parameters'] },
          },
          code('show(x)', display(table({ columns: ['Part'], rows: [['side']], caption: 'Sizes' }))),
          code('', { output_type: 'stream', name: 'stdout', text: ['one\n', 'two\n'] }),
        ],
      },
    },
    {
      name: '02-sizing',
      notebook: {
        cells: [
          prose('No heading here.'),
          code(
            'show(...working(f))',
            ...working(coefficientFormula, { D: 9, C: 0.0025, Mi: 8, Mf: 12 }).map(display),
            display(figure({ svg: '<svg xmlns="http://www.w3.org/2000/svg"/>', alt: 'A box', caption: 'The box' })),
            display(findingList([{ rule: 'foot', verdict: 'watch', figures: 'f', reason: 'r', change: 'c' }])),
            display(cautions(['glue'])),
          ),
        ],
      },
    },
  ],
  record: {
    entries: [entry(1, 'brief'), entry(2, 'sizing')],
    head: { seq: 2, hash: '2'.repeat(64) },
    problems: [],
  },
};
const page = commissionPage(commission);
const withCells = (...cells: CommissionPage['sheets'][0]['notebook']['cells']) =>
  commissionPage({ ...commission, sheets: [{ name: 'x', notebook: { cells } }] });

describe('the page of a commission', () => {
  it('has a title, its facts, contents that lead to every part, and its record', () => {
    expect(readHtml(page).getAttribute('lang')).toBe('en');
    expect(elementsOf(page, 'header dd').map((fact) => fact.textContent)).toEqual([
      'R. Example',
      '25 November 2026',
      'last entry 2:222222222222',
    ]);
    const links = elementsOf(page, 'nav a');
    expect(links.map((link) => link.textContent)).toEqual(['01 The brief', '02-sizing', 'Record of decisions']);
    for (const link of links) expect(elementsOf(page, `main ${link.getAttribute('href')}`)).toHaveLength(1);
  });

  it('is in landmarks, with headings in order and no id twice', () => {
    for (const landmark of ['header', 'nav', 'main']) expect(elementsOf(page, landmark)).toHaveLength(1);
    const levels = elementsOf(page, 'h1, h2, h3').map((heading) => heading.localName);
    expect(levels).toEqual(['h1', 'h2', 'h2', 'h2', 'h2']);
    for (const section of elementsOf(page, 'section'))
      expect(elementsOf(page, `#${section.getAttribute('aria-labelledby')}`)).toHaveLength(1);
    const ids = elementsOf(page, '[id]').map((each) => each.getAttribute('id'));
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('shows the parameters as a table, and other code folded away', () => {
    const rows = elementsOf(page, '.parameters tbody tr').map(({ textContent }) => textContent);
    expect(rows).toEqual(['inside length9 1/2 inthe way the lid slides', 'shop temperature C19by the stack']);
    expect(elementsOf(page, 'details.code').map((fold) => fold.getAttribute('open'))).toEqual([null, null]);
    expect(elementsOf(page, 'details.code code')[0]?.textContent).toBe('show(x)');
  });

  it('carries its mathematics as MathML, in prose and in working', () => {
    expect(elementsOf(page, 'p > math')).toHaveLength(1);
    expect(elementsOf(page, '.math > math[display="block"]')).toHaveLength(2);
    expect(readHtml(page).textContent).not.toContain('\\tfrac');
  });

  it('keeps what our own builders show', () => {
    expect(elementsOf(page, '.output table.daybook-table td')[0]?.getAttribute('style')).toBe('text-align:left');
    expect(elementsOf(page, 'figure img[alt="A box"]')).toHaveLength(1);
    expect(elementsOf(page, '.daybook-findings li')[0]?.getAttribute('style')).toContain('border-left:4px solid #555');
    expect(elementsOf(page, '.daybook-caution')).toHaveLength(1);
    expect(elementsOf(page, '.output pre')[0]?.textContent).toBe('one\ntwo');
  });

  it('needs nothing else: it loads nothing, runs nothing and forbids both', () => {
    expect(dangerous(page)).toEqual(['<style>']);
    const [policy] = elementsOf(page, 'meta[http-equiv="Content-Security-Policy"]');
    expect(policy?.getAttribute('content')).toBe(
      "default-src 'none'; img-src data:; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'",
    );
    expect(elementsOf(page, 'style')[0]?.textContent).not.toMatch(/url\(|@import|@font-face/);
  });

  it('is the same, byte for byte, for the same commission', () => {
    expect(commissionPage(structuredClone(commission))).toBe(page);
  });

  it('shows the record line by line, with the whole reference of its last entry', () => {
    const rows = elementsOf(page, 'table.record tbody tr').map((row) => row.textContent);
    expect(rows).toEqual([
      '12026-11-25makerbrieffirst decision1:111111111111',
      '22026-11-25makersizingfirst decision; rests on brief (1)2:222222222222',
    ]);
    expect(elementsOf(page, '.whole')[0]?.textContent).toBe(`2:${'2'.repeat(64)}`);
  });

  it('says at its head and at the record what is wrong with the record', () => {
    const problems = ['Line 3 was changed.'];
    const damaged = commissionPage({ ...commission, record: { ...commission.record, problems } });
    expect(elementsOf(damaged, '.problems li').map((item) => item.textContent)).toEqual([...problems, ...problems]);
  });

  it('is a page before anything has been recorded', () => {
    const empty = commissionPage({ title: 'Tea chest', sheets: [], record: { entries: [], problems: [] } });
    expect(elementsOf(empty, '#record p')[0]?.textContent).toBe('Nothing has been recorded yet.');
  });

  it('shows where a cell failed, without the colour codes of a terminal', () => {
    const failed = withCells(
      code('f()', {
        output_type: 'error',
        ename: 'E',
        evalue: 'v',
        traceback: ['\u001b[31mwidth: 40 ft given\u001b[0m'],
      }),
      code('g()', { output_type: 'stream', name: 'stderr', text: '\u001b[33mslow\u001b[0m\n' }),
    );
    expect(elementsOf(failed, 'pre.error').map((each) => each.textContent)).toEqual([
      'This cell failed.\nwidth: 40 ft given',
      'Message: slow',
    ]);
  });

  it('shows pictures that are kept in a sheet, and none from elsewhere', () => {
    const png = 'iVBORw0KGgo=';
    const shown = withCells(
      prose('![clamps](attachment:c%20l.png) ![far](https://example.org/x.png) ![gone](attachment:%ff.png)', {
        attachments: { 'c l.png': { 'image/png': png } },
      }),
      code('p()', { output_type: 'display_data', data: { 'image/png': `${png}\n`, 'text/plain': 'a board' } }),
      code('s()', { output_type: 'display_data', data: { 'image/svg+xml': ['<svg onload="alert(1)">', '</svg>'] } }),
    );
    const pictures = elementsOf(shown, 'img');
    expect(pictures.map((each) => each.getAttribute('alt'))).toEqual([
      'clamps',
      'a board',
      'picture without a description',
    ]);
    expect(pictures[0]?.getAttribute('src')).toBe(`data:image/png;base64,${png}`);
    expect(readHtml(shown).textContent).toContain('[far: https://example.org/x.png] [gone: attachment:%ff.png]');
    expect(dangerous(shown)).toEqual(['<style>']);
  });
});

describe('a link in a sheet', () => {
  const glossary = new Map([
    ['Half pin', 'The pin at the edge of a joint.'],
    ['Kerf', 'The width of a cut.'],
  ]);
  const linked = (text: string) =>
    commissionPage({ ...commission, glossary, sheets: [{ name: 'x', notebook: { cells: [prose(text)] } }] });
  const links = (html: string) => elementsOf(html, '#sheet-x a').map((a) => a.getAttribute('href'));

  it('to a word of the glossary leads to its meaning at the end of the page, which explains no other word', () => {
    const html = linked(
      'A [half pin](../../../worksheets/glossary.ipynb#Half-pin), and [it](../glossary.ipynb#Half-pin) again.',
    );
    expect(links(html)).toEqual(['#word-half-pin', '#word-half-pin']);
    expect(elementsOf(html, '#word-half-pin')[0]?.textContent).toBe('Half pin');
    expect(elementsOf(html, '#words dd').map(({ textContent }) => textContent)).toEqual([
      'The pin at the edge of a joint.',
    ]);
    expect(elementsOf(html, 'nav a').at(-1)?.getAttribute('href')).toBe('#words');
  });

  it('that leaves the folder of the commission stays words, since the page is handed on by itself', () => {
    const html = linked(
      '[none](../glossary.ipynb#Nothing), [lesson](../lessons/01.ipynb), [root](/etc), [quote](quote.html).',
    );
    expect(links(html)).toEqual(['quote.html']);
    expect(elementsOf(html, '#sheet-x p')[0]?.textContent).toBe('none, lesson, root, quote.');
    expect(elementsOf(html, '#words')).toEqual([]);
  });

  it('to a page of the web stays a link', () => {
    expect(links(linked('[wood](https://example.org/wood)'))).toEqual(['https://example.org/wood']);
  });
});

describe('a sheet that someone else has edited', () => {
  it.each([
    '<script>alert(1)</script>',
    '<img src=x onerror=alert(1)>',
    '<img src="https://example.org/track.png">',
    '<img src="data:text/html,<script>alert(1)</script>">',
    '<img srcset="https://example.org/a.png 2x" src="data:image/png;base64,AAAA">',
    '<svg><script>alert(1)</script><image href="https://example.org/x"/></svg>',
    '<math><mtext><style><img src=x onerror=alert(1)></style></mtext></math>',
    '<a href="javascript:alert(1)">x</a><a href="  JaVaScRiPt:alert(1)">x</a><a href="//example.org">y</a>',
    '<iframe src="https://example.org"></iframe><object data="x"></object><embed src="x">',
    '<form action="https://example.org"><input name=a><button>go</button></form>',
    '<meta http-equiv="refresh" content="0;url=https://example.org"><base href="https://example.org/"><link rel=stylesheet href=x>',
    '<div style="background:url(https://example.org/x);position:fixed;top:0;left:0;width:9999px">over all</div>',
    '<p onclick="alert(1)" style="text-align:left;behavior:url(x)">p</p>',
    '<style>body{display:none}</style><noscript><p title="</noscript><img src=x onerror=alert(1)>"></noscript>',
    '</section></main><script>alert(1)</script>',
    '<details open ontoggle=alert(1)><summary>x</summary></details>',
  ])('puts out %s, and nothing of it runs, loads or lies over the page', (text) => {
    const shown = withCells(
      code('evil()', html(text)),
      prose(text),
      code('m()', { output_type: 'display_data', data: { 'text/markdown': text } }),
    );
    expect(dangerous(shown)).toEqual(['<style>']);
    expect(elementsOf(shown, 'meta')).toHaveLength(3);
    expect(elementsOf(shown, 'main > section')).toHaveLength(2);
  });

  it.each([
    '\\href{javascript:alert(1)}{x}',
    '\\includegraphics{https://example.org/x.png}',
    '\\style{position:fixed}{x}',
    '\\class{whole}{x}',
    '\\text{<img src=x onerror=alert(1)>}',
    '\\def\\a{\\a\\a}\\a',
    '\\rule{99999em}{99999em}',
    '\\frac{',
  ])('puts out the mathematics %s, and nothing of it runs or loads', (tex) => {
    const shown = withCells(
      prose(`$${tex}$`),
      code('m()', { output_type: 'display_data', data: { 'text/latex': `$$${tex}$$` } }),
    );
    expect(dangerous(shown)).toEqual(['<style>']);
    expect(elementsOf(shown, 'math a, math img, .output .whole')).toEqual([]);
  });

  it('cannot take the place of a part of the page by its name', () => {
    const shown = withCells(code('evil()', html('<p id="record" name="record" class="problems">mine</p>')));
    expect(elementsOf(shown, '#record')).toHaveLength(1);
    expect(elementsOf(shown, '.problems, [name="record"]')).toHaveLength(0);
  });
});
