import { describe, expect, it } from 'vitest';
import { curvePlot } from '../../../kernel-helpers/src/show/plots/curve-plot.js';
import { cutOff, overlaps, pictureOf } from '../read-svg.js';

const line = (slope: number) => [6, 8, 10].map((x) => ({ x, y: slope * x }));

describe('a few curves over one axis', () => {
  const drawn = curvePlot(
    {
      curves: [
        { name: 'flat-sawn', points: line(2) },
        { name: 'quarter-sawn', points: line(1.99) },
      ],
      x: { label: 'moisture, %' },
      y: { label: 'wider, in' },
    },
    { alt: 'Both rise.', caption: 'One board cut two ways.' },
  );
  const { all, labels, width, height } = pictureOf(drawn);

  it('are told apart by their dashes, not by colour', () => {
    const curves = all('path').filter(
      (path) => path.getAttribute('stroke-width') === '2' || path.parentElement?.getAttribute('stroke-width') === '2',
    );
    const dashes = curves.map(
      (curve) => curve.getAttribute('stroke-dasharray') ?? curve.parentElement?.getAttribute('stroke-dasharray') ?? '',
    );
    expect(new Set(dashes).size).toBe(2);
  });

  it('carry their names beside their ends, apart from one another even where the curves end together', () => {
    expect(labels.map(({ text }) => text)).toEqual(expect.arrayContaining(['flat-sawn', 'quarter-sawn']));
    expect(overlaps(labels)).toEqual([]);
    expect(cutOff(labels, { width, height })).toEqual([]);
  });

  it('name both axes with their units', () => {
    expect(labels.map(({ text }) => text)).toEqual(expect.arrayContaining(['moisture, %', 'wider, in']));
  });
});
