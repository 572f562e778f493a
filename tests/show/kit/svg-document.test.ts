import * as Plot from '@observablehq/plot';
import { parseHTML } from 'linkedom';
import { describe, expect, it } from 'vitest';
import { SvgDocument } from '../../../kernel-helpers/src/show/kit/svg-document.js';
import { must } from '../../record/setting.js';

const days = [0, 3, 7, 9, 14, 20, 26, 30].map((day, i) => ({
  day,
  mean: 12 - day / 8 + (i % 3) / 4,
  core: 11 + (i % 4) - day / 10,
  wood: ['cherry <dark>', 'white oak "A" & B', 'walnut\u00a0'][i % 3],
}));
const xy = { x: 'day', y: 'mean' };

const pictures: Record<string, Plot.PlotOptions> = {
  'lines, dots and grids': { marks: [Plot.gridX(), Plot.lineY(days, xy), Plot.dot(days, { ...xy, r: 4 })] },
  'a band with limits': {
    marks: [Plot.areaY(days, { x: 'day', y1: 'mean', y2: 'core' }), Plot.ruleY([8]), Plot.ruleX(days, { x: 'day' })],
  },
  'facets with labels': { marks: [Plot.dot(days, { ...xy, fy: 'wood', title: 'wood' }), Plot.frame()], grid: true },
  'texts of many lines': { marks: [Plot.text(days, { ...xy, text: () => 'one\ntwo & <three>', href: () => '#wood' })] },
  'bars, cells and ticks': {
    marks: [
      Plot.barX(days, Plot.groupY({ x: 'count' }, { y: 'wood', fill: 'wood' })),
      Plot.tickX(days, { x: 0.5, y: 'wood' }),
    ],
  },
  'a histogram': { marks: [Plot.rectY(days, Plot.binX({ y: 'count' }, { x: 'mean' }))] },
  'arrows, links and vectors': {
    marks: [
      Plot.arrow(days, { x1: 'day', y1: 'mean', x2: 'day', y2: 'core' }),
      Plot.link(days, { x1: 'day', y1: 'mean', x2: 'day', y2: 'core', markerEnd: 'arrow' }),
      Plot.vector(days, { ...xy, rotate: 'core' }),
    ],
  },
  'a regression and a box': { marks: [Plot.linearRegressionY(days, xy), Plot.boxX(days, { x: 'mean' })] },
  'a difference, clipped': { marks: [Plot.differenceY(days, { x: 'day', y1: 'core', y2: 'mean', clip: 'frame' })] },
  'a waffle': { marks: [Plot.waffleY(days, { x: 'wood', y: 'day' })] },
  'a hull, contours and hexagons': {
    marks: [Plot.hull(days, xy), Plot.density(days, xy), Plot.dot(days, Plot.hexbin({ r: 'count' }, xy))],
  },
  'blends and gradients': {
    style: { background: 'white', fontSize: '13px' },
    marks: [Plot.areaY(days, { ...xy, mixBlendMode: 'multiply', stroke: 'wood' }), Plot.tip(days.slice(0, 1), xy)],
  },
};

/** A picture as text, on the document given. */
const drawn = (options: Plot.PlotOptions, document: unknown) => {
  const svg = Plot.plot({ ...options, document } as Plot.PlotOptions) as unknown as {
    outerHTML: string;
    setAttribute(name: string, value: string): void;
  };
  if (!(document instanceof SvgDocument)) svg.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
  return svg.outerHTML;
};

/** Its elements and texts, one a line, attributes by name; Plot counts its ids on from one picture to the next. */
function levelled(svg: string): string[] {
  return (svg.match(/<[^>]*>|[^<]+/g) ?? []).map((part) => {
    const [name, ...attributes] = part.replace(/(-\d+)+(?=[)"])/g, '-n').split(/ (?=[a-z:A-Z-]+="|\/>)/);
    return part.startsWith('<') ? [name, ...attributes.sort()].join(' ') : part;
  });
}

describe('the document for SVG', () => {
  it.each(Object.keys(pictures))('draws %s as a whole DOM does', (name) => {
    const options = must(pictures[name]);
    const whole = drawn(options, parseHTML('<html></html>').document);
    expect(levelled(drawn(options, new SvgDocument()))).toEqual(levelled(whole));
  });

  it('takes an element out of its old place before it stands in a new one', () => {
    const document = new SvgDocument();
    const [a, b, c] = ['a', 'b', 'c'].map((name) => document.createElementNS('', name));
    const root = document.createElementNS('', 'g');
    for (const child of [a, b, c]) root.appendChild(must(child));
    root.insertBefore(must(c), must(a));
    expect(root.children.map(({ localName }) => localName)).toEqual(['c', 'a', 'b']);
    must(b).appendChild(must(a));
    expect(root.children.map(({ localName }) => localName)).toEqual(['c', 'b']);
  });
});
