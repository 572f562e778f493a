import { describe, expect, it } from 'vitest';
import { figure } from '../../../kernel-helpers/src/show/kit/figure.js';
import { elementsOf, svgOf } from '../read-html.js';

const svg = '<svg xmlns="http://www.w3.org/2000/svg" width="10" height="10"><text>1/2″ & ä</text></svg>';

describe('a figure', () => {
  const shown = figure({ svg, alt: 'A board, "quarter" sawn', caption: 'Rings stand upright.', width: 300 });

  it('is an image with a text alternative inside HTML: what a sheet that is not trusted may still show', () => {
    expect(shown.mime).toBe('text/html');
    const [image] = elementsOf(shown.text, 'figure > img');
    expect(image?.getAttribute('alt')).toBe('A board, "quarter" sawn');
    expect(image?.getAttribute('width')).toBe('300');
    expect(elementsOf(shown.text, 'figcaption')[0]?.textContent).toBe('Rings stand upright.');
  });

  it('holds the picture unchanged', () => {
    expect(svgOf(shown)).toBe(svg);
  });

  it('is refused without words for what it shows', () => {
    expect(() => figure({ svg, alt: ' ', caption: 'c' })).toThrow(
      'alt: nothing given; every picture needs words for what it shows',
    );
    expect(() => figure({ svg, alt: 'a', caption: '' })).toThrow('caption: nothing given');
  });
});
