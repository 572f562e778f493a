import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../kernel-helpers/src/measure/finding.js';
import { findingList } from '../../../kernel-helpers/src/show/tables/finding-list.js';
import { elementsOf } from '../read-html.js';

const finding = (verdict: Finding['verdict'], rule: string): Finding => ({
  rule,
  verdict,
  figures: 'groove 3/8 in deep in 5/8 in stock',
  reason: 'a deep groove leaves a wall that splits',
  change: 'groove at most 5/16 in',
});

describe('a list of findings', () => {
  const { text } = findingList([finding('ok', 'foot'), finding('stop', 'groove'), finding('watch', 'lip')]);
  const items = elementsOf(text, 'li').map((item) => item.textContent);

  it('has the worst first, each verdict told by a word and a shape of its own', () => {
    expect(items.map((item) => item.split('.')[0])).toEqual(['■ Stop: groove', '▲ Watch: lip', '○ In order: foot']);
    expect(elementsOf(text, 'p')[0]?.textContent).toBe('1 to stop for, 1 to watch, 1 in order.');
  });

  it('leaves the name of a parameter as it is typed in the sheet', () => {
    const named = { ...finding('watch', 'groove'), change: 'bottomGrooveDepth at most 5/16 in' };
    expect(findingList([named]).text).toContain(' bottomGrooveDepth at most');
  });

  it('tells figures and reason of all, and what to change of those that are not in order', () => {
    expect(items[0]).toContain(
      'Groove 3/8 in deep in 5/8 in stock. A deep groove leaves a wall that splits. To change: Groove at most 5/16 in.',
    );
    expect(items[2]).toContain('A deep groove leaves a wall that splits.');
    expect(items[2]).not.toContain('To change');
  });

  it('shows why a stop was built all the same', () => {
    const { text } = findingList([finding('stop', 'groove')], { groove: 'the client insists' });
    expect(elementsOf(text, 'li')[0]?.textContent).toContain('Built all the same, because: The client insists.');
  });

  it('says so when there was nothing to check', () => {
    expect(elementsOf(findingList([]).text, 'p')[0]?.textContent).toBe('No rule was checked.');
  });
});
