import { expect, test } from 'vitest';
import { type RouterSetUp, setUpFindings } from '../../kernel-helpers/src/surface/set-up.js';

const safe: RouterSetUp = {
  guide: 'template',
  held: 'clamped',
  feed: 'against the turning',
  guard: 'on',
  pieceLength: '10 in',
};
const stops = (more: Partial<RouterSetUp>) =>
  setUpFindings({ ...safe, ...more })
    .filter(({ verdict }) => verdict !== 'ok')
    .map(({ rule, verdict }) => `${verdict}: ${rule}`);

test('a clamped lid, guided and fed against the turning, is in order', () => {
  expect(stops({})).toEqual([]);
});

test.each([
  [{ held: 'by hand' }, 'stop: work held'],
  [{ guide: 'freehand' }, 'stop: cut guided'],
  [{ feed: 'with the turning' }, 'stop: feed direction'],
  [{ guard: 'off' }, 'stop: guard on'],
  [{ pieceLength: '5 in' }, 'stop: piece long enough to hold'],
] as [Partial<RouterSetUp>, string][])('%o is never an option', (more, stop) => {
  expect(stops(more)).toEqual([stop]);
});

test('a carving machine may climb: no hand holds it', () => {
  expect(stops({ guide: 'carving machine', feed: 'with the turning' })).toEqual([]);
});

test('a word that is none', () => {
  expect(() => setUpFindings({ ...safe, guard: 'maybe' as 'on' })).toThrow('guard: "maybe" given; possible: on, off');
});
