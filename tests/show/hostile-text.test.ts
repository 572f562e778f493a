import { describe, expect, it } from 'vitest';
import { drawnBox } from '../../kernel-helpers/src/piece/box/drawn-box.js';
import { sizeBox } from '../../kernel-helpers/src/piece/box/size-box.js';
import { pieceDrawing } from '../../kernel-helpers/src/show/drawing/piece-drawing.js';
import { escapeHtml, markdown } from '../../kernel-helpers/src/show/kit/escape.js';
import { figure } from '../../kernel-helpers/src/show/kit/figure.js';
import { element, label, svgPicture } from '../../kernel-helpers/src/show/kit/svg.js';
import { table } from '../../kernel-helpers/src/show/kit/table.js';
import { commissionPage } from '../../kernel-helpers/src/show/page/commission-page.js';
import { proseHtml } from '../../kernel-helpers/src/show/page/prose.js';
import { plot } from '../../kernel-helpers/src/show/plots/plot.js';
import { findingList } from '../../kernel-helpers/src/show/tables/finding-list.js';
import { working } from '../../kernel-helpers/src/show/working/working.js';
import { dangerous, elementsOf, readHtml, svgOf } from './read-html.js';
import { pictureOf } from './read-svg.js';

/** A client who is up to no good. */
const client = `Ann <script>alert('x')</script> & "Sons" <img src=x onerror=alert(1)> \${7} $a$ **b** </style></title>`;
const words = { alt: client, caption: client };

describe("a client's name with a script in it stays text", () => {
  it('in a table', () => {
    const { text } = table({ columns: [client, { head: client, unit: client }], rows: [[client, 1]], caption: client });
    expect(dangerous(text)).toEqual([]);
    expect(elementsOf(text, 'td')[0]?.textContent).toBe(client);
    expect(elementsOf(text, 'caption')[0]?.textContent).toBe(client);
  });

  it('in findings', () => {
    const finding = { rule: client, verdict: 'stop' as const, figures: client, reason: client, change: client };
    const { text } = findingList([finding], { [client]: client });
    expect(dangerous(text)).toEqual([]);
    expect(elementsOf(text, 'li')[0]?.textContent.split(client)).toHaveLength(6);
  });

  it('beside a figure, and inside its picture', () => {
    const shown = figure({ ...words, svg: svgPicture(10, 10, [label(client, 1, 1), element('g', { id: client })]) });
    expect(dangerous(shown.text)).toEqual([]);
    expect(elementsOf(shown.text, 'img')[0]?.getAttribute('alt')).toBe(client);
    expect(elementsOf(shown.text, 'figcaption')[0]?.textContent).toBe(client);
    expect(svgOf(shown)).not.toContain('<script');
    expect(pictureOf(shown).labels[0]?.text).toBe(client);
  });

  it('in a plot', () => {
    const shown = plot(
      (Plot) => ({
        x: { label: client },
        marks: [Plot.text([client], { text: (d: string) => d, title: (d: string) => d })],
      }),
      words,
    );
    expect(dangerous(shown.text)).toEqual([]);
    expect(svgOf(shown)).not.toMatch(/<script|<img/);
    expect(pictureOf(shown).labels.map(({ text }) => text)).toContain(client);
  });

  it('in the working of a formula', () => {
    const [math, list] = working(
      {
        name: client,
        result: { meaning: client, unit: client },
        expression: 'a + 1',
        symbols: { a: { meaning: client, unit: client } },
        source: client,
      },
      { a: 1 },
    );
    expect(math?.text).not.toMatch(/[^\\]\$a\$/);
    expect(dangerous(list?.text ?? '')).toEqual([]);
    expect(elementsOf(list?.text ?? '', 'td')[1]?.textContent).toBe(client);
  });

  it('in Markdown, where it also makes no emphasis, link, code or mathematics', () => {
    for (const name of [
      client,
      '[a](javascript:alert(1)) `c` _d_ http://e.org',
      '# 1. - > | ~~x~~ &lt; \\ $$y$$',
      'a\n\nb',
    ]) {
      const html = proseHtml(markdown`For ${name}, with **care**.`);
      expect(dangerous(html)).toEqual([]);
      expect(readHtml(html).textContent.trim()).toBe(`For ${name.replace(/\s+/g, ' ')}, with care.`);
      expect(elementsOf(html, 'p *').map((each) => each.localName)).toEqual(['strong']);
    }
  });

  it('on the page: in its title, its running head, its prose, its parameters, its outputs and its record', () => {
    const entry = {
      seq: 1,
      at: '2026-11-25T10:00:00-05:00',
      who: client,
      what: client,
      needs: {},
      inputs: { client },
      results: {},
      findings: [],
      overrides: { [client]: client },
      versions: { node: client, helpers: client, build: client, data: { [client]: client } },
      prev: '0'.repeat(64),
      hash: 'a'.repeat(64),
    };
    const cell = {
      cell_type: 'code',
      source: `f('${client}')`,
      outputs: [{ output_type: 'stream', name: 'stdout', text: client }],
    };
    const given = {
      ...cell,
      source: `const parameters = {\n  client: "${client.replaceAll('"', '\\"')}", // ${client}\n};`,
      metadata: { tags: ['parameters'] },
    };
    const html = commissionPage({
      title: client,
      client,
      date: '2026-03-02',
      sheets: [{ name: client, notebook: { cells: [{ cell_type: 'markdown', source: client }, cell, given] } }],
      record: { entries: [entry], head: { seq: 1, hash: entry.hash }, problems: [client] },
    });
    expect(dangerous(html)).toEqual(['<style>']);
    expect(elementsOf(html, 'h1')[0]?.textContent).toBe(client);
    expect(elementsOf(html, 'title')[0]?.textContent).toBe(`${client} for ${client}`);
    expect(elementsOf(html, '.parameters td.value')[0]?.textContent).toBe(client);
    expect(elementsOf(html, '.output pre')[0]?.textContent).toBe(client);
    expect(elementsOf(html, '.record td')[3]?.textContent).toBe(client);
    expect(elementsOf(html, '.problems li')[0]?.textContent).toBe(client);
    expect(html.split('</style>')).toHaveLength(2);
  });

  it('and characters that XML forbids do not blank a picture', () => {
    expect(escapeHtml('a\u0000b\ud800c\u000bd')).toBe('a\ufffdb\ufffdc\ufffdd');
    expect(escapeHtml('tea 🍵')).toBe('tea 🍵');
  });
});

it('a drawing of a box takes no text from outside', () => {
  const box = sizeBox({ insideLength: 6, insideWidth: 5, insideDepth: 4, species: 'walnut-black' });
  expect(dangerous(pieceDrawing(drawnBox(box)).text)).toEqual([]);
});
