import { describe, expect, it } from 'vitest';
import { plot } from '../../../kernel-helpers/src/show/plots/plot.js';
import { pictureOf } from '../read-svg.js';

const days = [
  { day: 0, mean: 12 },
  { day: 10, mean: 10 },
  { day: 30, mean: 8 },
];
const words = { alt: 'Moisture falls from 12 to 8 %.', caption: 'Ready after 30 days.' };
const drawn = plot(
  (Plot) => ({
    x: { label: 'day <b>' },
    y: { label: 'moisture, %', domain: [6, 14] },
    marks: [Plot.line(days, { x: 'day', y: 'mean' }), Plot.dot(days, { x: 'day', y: 'mean', r: 4 })],
  }),
  words,
);

describe('a plot', () => {
  const { svg, all, labels, number, width, height } = pictureOf(drawn);

  it('stands on its own white ground, with a font and an ink of its own', () => {
    expect(svg).toMatch(/^<svg [^>]*xmlns="http:\/\/www\.w3\.org\/2000\/svg"/);
    const ground = all('rect')[0];
    expect([
      ground?.getAttribute('fill'),
      ground && number(ground, 'width'),
      ground && number(ground, 'height'),
    ]).toEqual(['#fff', width, height]);
    expect(svg).toContain('font-family:Helvetica, Arial');
    expect(svg).toContain('color:#1a1a1a');
  });

  it('has its points where the data say', () => {
    const points = all('circle').map((circle) => ({ x: number(circle, 'cx'), y: number(circle, 'cy') }));
    const [a, b, c] = points as [(typeof points)[0], (typeof points)[0], (typeof points)[0]];
    expect((b.x - a.x) / (c.x - a.x)).toBeCloseTo(10 / 30, 3);
    expect((b.y - a.y) / (c.y - a.y)).toBeCloseTo(2 / 4, 3);
  });

  it('carries its axis labels as plain text', () => {
    expect(labels.some(({ text }) => text.includes('day <b>'))).toBe(true);
    expect(svg).not.toContain('<b>');
  });

  it('is the same, byte for byte, when it is drawn again', () => {
    const again = plot(
      (Plot) => ({
        x: { label: 'day <b>' },
        y: { label: 'moisture, %', domain: [6, 14] },
        marks: [Plot.line(days, { x: 'day', y: 'mean' }), Plot.dot(days, { x: 'day', y: 'mean', r: 4 })],
      }),
      words,
    );
    expect(again.text).toBe(drawn.text);
  });

  it.each([
    { title: 'Moisture' },
    { caption: 'Moisture' },
    { color: { legend: true } },
    { color: { legend: true, type: 'categorical' } },
  ])('has no words to hunt for: %o', (options) => {
    const drawing = () => plot((Plot) => ({ ...options, marks: [Plot.dot(days, { x: 'day', fill: 'mean' })] }), words);
    expect(drawing).toThrow('plot: title, subtitle, caption and legend are not possible here');
  });
});
