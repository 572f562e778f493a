import DxfParser from 'dxf-parser';
import { parseHTML } from 'linkedom';
import { describe, expect, it } from 'vitest';
import { draftPaper } from '../../../kernel-helpers/src/record/drafts/draft-paper.js';

describe('a paper of a draft', () => {
  it('says DRAFT across each printed page, hides nothing, and says on the screen what is not decided', () => {
    const html = draftPaper('quote.html', '<!doctype html><html><body class="a"><h1>Quote</h1></body></html>', 'quote');
    const { document } = parseHTML(html);
    const across = document.querySelector('[data-draft="across"]');
    expect(across?.textContent).toBe('DRAFT');
    expect(across?.getAttribute('style')).toContain('position: fixed');
    expect(across?.getAttribute('style')).toContain('pointer-events: none');
    expect(across?.querySelector('span')?.getAttribute('style')).toContain('color: transparent');
    expect(document.querySelector('aside')?.textContent).toBe(
      'Draft: quote is worked out and not decided. Promise nothing from this paper, and do not work from it.',
    );
    expect(document.querySelector('h1')?.textContent).toBe('Quote');
  });

  it('says so in the middle of a picture, in the size of it', () => {
    const svg = draftPaper('views.svg', '<svg viewBox="0 0 6.1 10"><path d="M0,0H1"/></svg>\n', 'sizing');
    const { document } = parseHTML(svg);
    const text = document.querySelector('text');
    expect(text?.textContent).toBe('DRAFT');
    expect(text?.getAttribute('transform')).toBe('translate(3.05 5) rotate(-35)');
    expect(Number(text?.getAttribute('font-size'))).toBeCloseTo(1.464, 3);
    expect(svg.endsWith('</svg>\n')).toBe(true);
  });

  it('says so in a comment of a drawing to cut from, which is read as before', () => {
    const dxf = '0\nSECTION\n2\nENTITIES\n0\nPOINT\n8\n0\n10\n1\n20\n2\n0\nENDSEC\n0\nEOF\n';
    const marked = draftPaper('parts.dxf', dxf, 'grooves');
    expect(marked.startsWith('999\nDraft: grooves is worked out and not decided.')).toBe(true);
    expect(new DxfParser().parseSync(marked)?.entities).toEqual(new DxfParser().parseSync(dxf)?.entities);
  });

  it('leaves a table as it was', () => {
    expect(draftPaper('cuts.csv', 'part,width\n', 'stock')).toBe('part,width\n');
  });
});
