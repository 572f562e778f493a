import { describe, expect, it } from 'vitest';
import { ShopError } from '../../../kernel-helpers/src/measure/shop-error.js';
import { tapeDrawing } from '../../../kernel-helpers/src/show/drawing/tape-drawing.js';
import { pictureOf } from '../read-svg.js';

describe('a piece of tape', () => {
  const drawn = tapeDrawing({ inches: 3, arrows: { A: 7 / 16, B: '1 13/16 in' } });
  const { all, number } = pictureOf(drawn);
  const lines = all('line').map((line) => ({
    x: number(line, 'x1'),
    from: number(line, 'y1'),
    long: number(line, 'y2') - number(line, 'y1'),
  }));
  const tape = Math.max(...lines.map(({ from }) => from));
  const marks = lines.filter(({ from }) => from === tape);

  it('has sixteen marks to the inch, evenly, the coarser the longer', () => {
    expect(marks).toHaveLength(3 * 16 + 1);
    const step = (marks[48]?.x ?? 0) - (marks[0]?.x ?? 0);
    marks.forEach(({ x }, i) => {
      expect(x - (marks[0]?.x ?? 0)).toBeCloseTo((step * i) / 48, 2);
    });
    const [sixteenth, eighth, quarter, half, inch] = [1, 2, 4, 8, 16].map((i) => marks[i]?.long ?? 0);
    expect([inch, half, quarter, eighth, sixteenth]).toEqual(
      [sixteenth, eighth, quarter, half, inch].map((long) => long ?? 0).sort((a, b) => b - a),
    );
    expect(new Set([sixteenth, eighth, quarter, half, inch]).size).toBe(5);
  });

  it('has its arrows at the lengths given', () => {
    const arrows = lines.filter(({ from }) => from < tape).map(({ x }) => x);
    expect(arrows[0]).toBeCloseTo(marks[7]?.x ?? 0, 2);
    expect(arrows[1]).toBeCloseTo(marks[29]?.x ?? 0, 2);
  });

  it('counts the marks for those who cannot see it, and does not read them out', () => {
    expect(drawn.text).toContain('A stands 7 marks past 0 in; B stands 13 marks past 1 in');
    expect(drawn.text).not.toContain('13/16');
  });

  it.each([
    [{ inches: 3, arrows: { B: '3 1/16 in' } }, /B at "3 1\/16 in" given; possible: a sixteenth from 0 to 3 in/],
    [{ inches: 3, arrows: { B: '1/32 in' } }, /possible: a sixteenth/],
    [{ inches: 3, arrows: { B: -1 } }, /possible: a sixteenth/],
    [{ inches: 0.5, arrows: {} }, /inches: 0.5 given; possible: a whole number from 1 to 12/],
  ])('refuses what it cannot show: %j', (given, message) => {
    expect(() => tapeDrawing(given)).toThrow(ShopError);
    expect(() => tapeDrawing(given)).toThrow(message);
  });
});
