import { describe, expect, it, test } from 'vitest';
import { layOutDovetails } from '../../../kernel-helpers/src/joints/dovetails.js';
import { layOutFingers } from '../../../kernel-helpers/src/joints/finger-joint.js';
import { sizeBookcase } from '../../../kernel-helpers/src/piece/bookcase/bookcase.js';
import { sizeBox } from '../../../kernel-helpers/src/piece/box/size-box.js';
import { sizeDrawer } from '../../../kernel-helpers/src/piece/drawer/drawer.js';
import { sizeFrameAndPanel } from '../../../kernel-helpers/src/piece/frame-and-panel/frame-and-panel.js';
import { sizeSolidTop } from '../../../kernel-helpers/src/piece/solid-top/solid-top.js';
import { keyFigures } from '../../../kernel-helpers/src/record/key-figures/key-figures.js';
import type { Shown } from '../../../kernel-helpers/src/record/key-figures/shown.js';
import { yearOfAir } from '../../../kernel-helpers/src/wood/air/air.js';
import { demonstrationDecisions } from './demonstration-decisions.js';

const tape: Shown = { units: 'tape', currency: 'USD' };
const metric: Shown = { units: 'mm', currency: 'EUR' };
const asKept = (value: unknown) => JSON.parse(JSON.stringify(value));
const sentence = (what: string, results: unknown, shown = tape) => keyFigures(what, asKept(results), shown).sentence;
const figure = (what: string, results: unknown, name: string, shown = tape) =>
  keyFigures(what, asKept(results), shown).figures.find((each) => each.name === name);

const inside = { insideLength: 9.5, insideWidth: 6.25, insideDepth: 4 };
const box = sizeBox({ ...inside, species: 'walnut-black', proud: '1/8 in' });
const air = yearOfAir({ place: 'chicago-ohare' });
const moving = { species: 'cherry-black', ringAngle: 0, fittingMoisture: 8, air };

describe('in one short sentence', () => {
  const decided = demonstrationDecisions();

  it('a box is so long, wide and high', () => {
    expect(sentence('sizing', box)).toBe('11 x 7 3/4 x 4 61/64 in overall');
    expect(sentence('sizing', box, metric)).toBe('279.4 x 196.9 x 125.8 mm overall');
  });

  it('a piece that is fitted in its sizing says what it is planed to', () => {
    const drawer = sizeDrawer({ ...moving, opening: '5 in', openingWidth: '12 in', openingDepth: '16 in' });
    expect(sentence('sizing', drawer)).toMatch(/ overall, planed to a height of 4\.\d{3} in$/);
    const door = sizeFrameAndPanel({ ...moving, height: '24 in', width: '16 in' });
    expect(sentence('sizing', door)).toMatch(/ overall, panel planed to a width of \d+\.\d{3} in$/);
    expect(sentence('sizing', door, metric)).toMatch(/ mm overall, panel planed to a width of \d+\.\d\d mm$/);
  });

  it('a bookcase and a top too', () => {
    const bookcase = sizeBookcase({
      species: 'cherry-black',
      height: '48 in',
      width: '30 in',
      depth: '11 in',
      shelves: 3,
    });
    expect(sentence('sizing', bookcase)).toMatch(/^[\d/ ]+ x [\d/ ]+ x [\d/ ]+ in overall$/);
    expect(figure('sizing', bookcase, 'Clear between the shelves')?.value).toMatch(/^[\d/ ]+ x [\d/ ]+ x [\d/ ]+ in$/);
    expect(sentence('sizing', sizeSolidTop({ ...moving, length: '40 in', width: '20 in' }))).toMatch(/ in overall$/);
  });

  it('a lid is planed to a width, as the caliper shows it', () => {
    const lid = { ...decided.lid, fittedWidth: 6.6569 };
    expect(sentence('lid', lid)).toBe('plane to 6.657 in');
    expect(sentence('lid', lid, metric)).toBe('plane to 169.09 mm');
  });

  it('a joint has its tails or its fingers', () => {
    const boards = { boardWidth: '5 in', stockThickness: '1/2 in' };
    const tails = { layout: layOutDovetails({ ...boards, tails: 3, pinWidth: '1/4 in', halfPin: '1/2 in', slope: 8 }) };
    expect(sentence('joint', { ...tails, firstBoards: 'sides' })).toMatch(
      /^3 tails a corner, dividers at 1 [\d/]+ in, gauge/,
    );
    const fingers = { layout: layOutFingers({ ...boards, fingerWidth: '1/2 in' }), firstBoards: 'sides' };
    expect(sentence('joint', fingers)).toMatch(/^10 fingers of 1\/2 in, gauge at 1\/2 in$/);
  });

  it('boards are counted with the sheets, and only those that are bought cost something', () => {
    const board = { mark: 'A', thickness: 1, width: 6, length: 48, price: 14.5 };
    const sheet = { mark: 'P', thickness: 0.203125, width: 12, length: 24, price: 4.5, plywood: true };
    const stock = { ...decided.stock, boards: [board, { ...board, mark: 'B', inHand: true }], sheets: [sheet] };
    expect(sentence('stock', stock)).toBe('3 boards, $38.00'); // 2 board feet at 14.50 and a sheet of 9
    expect(sentence('stock', stock, metric)).toBe('3 boards, €38.00');
    expect(sentence('stock', { ...stock, boards: [], sheets: [sheet] })).toBe('1 board, $9.00');
  });

  it('a quote asks its price in its own currency', () => {
    const asked = (currency: string, minor: number) => {
      const { quote, cost } = decided.quote;
      const price = { minor, currency };
      return { ...decided.quote, cost: { ...cost, total: price }, quote: { ...quote, price } };
    };
    expect(sentence('quote', asked('USD', 97700))).toBe('$977.00');
    expect(sentence('quote', asked('JPY', 97700))).toBe('¥97,700');
  });

  it('the days say when it is ready and when it is promised', () => {
    const days = { ...decided.days, finish: '2027-02-05', promised: '2027-02-12' };
    expect(sentence('days', days)).toBe('ready 2027-02-05, promised 2027-02-12');
    expect(figure('days', { ...days, latestStart: undefined }, 'Last day to begin')?.value).toBe('past');
  });

  it('what it took stands beside what was estimated, and a lid beside its season', () => {
    const actuals = { operations: [], untimed: [], boardFeet: 3, changes: [], why: {}, learned: '' };
    const took = { ...actuals, finished: '2027-02-04', estimated: 12.6, actual: 13.14, yield: 0.25 };
    expect(sentence('actuals', took)).toBe('finished 2027-02-04, 13.1 h where 12.6 h were estimated');
    expect(sentence('answer', { answer: 'accepted', date: '2026-12-20', reason: '' })).toBe('accepted 2026-12-20');
    const measurements = [{ date: '2027-07-04', clearance: 0.043 }];
    expect(sentence('measured', { measurements })).toBe('measured 2027-07-04: play 0.043 in');
    expect(sentence('measured', { measurements: [] })).toBe('not measured yet');
  });

  it('every decision of the demonstration has one, of a line, and figures to compare it by', () => {
    for (const [what, results] of Object.entries(decided)) {
      const { sentence, figures } = keyFigures(what, results, tape);
      expect(sentence.length, what).toBeGreaterThan(5);
      expect(sentence.length, what).toBeLessThan(90);
      expect(figures.length, what).toBeGreaterThanOrEqual(3);
      expect(
        figures.filter(({ value }) => !value || /NaN|undefined/.test(value)),
        what,
      ).toEqual([]);
    }
  });
});

test('a figure that is one number can be reckoned with', () => {
  expect(figure('sizing', box, 'Marking gauge')).toEqual({ name: 'Marking gauge', value: '3/4 in', number: 0.75 });
  expect(figure('sizing', box, 'Overall')?.number).toBeUndefined();
});

test('of a decision of an older daybook, or one that nobody knows, nothing is said', () => {
  const nothing = { sentence: '', figures: [] };
  expect(keyFigures('lid', { width: 6.5 }, tape)).toEqual(nothing);
  expect(keyFigures('toString', {}, tape)).toEqual(nothing);
  expect(keyFigures('sizing', undefined, tape)).toEqual(nothing);
});

test('a wood that is no longer among the woods takes nothing else along', () => {
  expect(keyFigures('brief', { ...demonstrationDecisions().brief, species: 'oak-from-the-barn' }, tape).sentence).toBe(
    '',
  );
});
