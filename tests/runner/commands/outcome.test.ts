import { expect, test } from 'vitest';
import { outcomeText } from '../../../kernel-helpers/src/runner/commands/outcome.js';
import { content, entriesOf } from '../../record/setting.js';

const answer = (reason: string) => ({ answer: 'accepted', date: '2026-02-01', reason });
const entries = entriesOf([
  content({ what: 'answer', results: answer('') }),
  content({ what: 'something', results: {} }),
]);

test('a sheet that decided says what, in a few words, and whether it is new', () => {
  expect(outcomeText(['answer'], { entries, drafts: [], known: 0 })).toMatch(/accepted.* \(recorded, entry 1\)$/);
  expect(outcomeText(['answer'], { entries, drafts: [], known: 2 })).toMatch(/accepted.* \(same\)$/);
});

test('a sheet of two decisions says both, and one without a sentence goes by its name', () => {
  expect(outcomeText(['answer', 'something'], { entries, drafts: [], known: 1 })).toMatch(
    /accepted.* \(same\); something \(recorded, entry 2\)$/,
  );
});

test('what is only a draft is called one', () => {
  const { what, results, inputs, needs, findings, overrides, at, who } = content({
    what: 'answer',
    results: answer(''),
  });
  const drafts = [{ what, results, inputs, needs, findings, overrides, at, who }];
  expect(outcomeText(['answer'], { entries, drafts, known: 2 })).toMatch(/accepted.* \(draft\)$/);
});

test('a sheet that has decided nothing says so', () => {
  expect(outcomeText([], { entries, drafts: [], known: 2 })).toBe('nothing to decide yet');
});
