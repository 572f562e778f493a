import { PassThrough } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { askBrief } from '../../../kernel-helpers/src/runner/commands/ask-brief.js';

const box = { piece: 'box', today: '2026-11-27', promised: '2027-01-22' };
const ctrlC = '\u0003';
const ctrlU = '\u0015';

/** A terminal at which somebody types each answer once its question stands there. */
function typing(...answers: [question: RegExp, keys: string][]) {
  const input = Object.assign(new PassThrough(), { isTTY: true, setRawMode: () => undefined });
  const output = Object.assign(new PassThrough(), { columns: 200, rows: 40, isTTY: true });
  let unanswered = '';
  let shown = '';
  output.setEncoding('utf8').on('data', (text: string) => {
    shown += text;
    unanswered += text;
    const [question, keys] = answers[0] ?? [];
    if (!question?.test(unanswered)) return;
    answers.shift();
    unanswered = '';
    setTimeout(() => input.write(keys as string), 5);
  });
  return { input, output, shown: () => shown, left: answers };
}

describe('the questions of a new commission', () => {
  it('are answered one after another, Enter taking what is offered', async () => {
    const at = typing(
      [/Who is it for/, 'Ann Example\r'],
      [/How large is it inside/, '13 1/4 x 8 x 5 in\r'],
      [/Which corner joint/, '\r'],
      [/Which wood/, 'white oak\r'],
      [/made personal.*Enter for plain/, '\r'],
      [/Where will it live/, 'Denver\r'],
      [/promised for.*Enter for 2027-01-22/, '\r'],
    );
    expect(await askBrief({}, box, at)).toEqual({
      ...{ client: 'Ann Example', insideLength: '13 1/4 in', insideWidth: '8 in', insideDepth: '5 in' },
      ...{ joint: 'through dovetail', species: 'white oak', personal: 'plain', home: 'Denver', promised: '2027-01-22' },
    });
  });

  it('are asked again where a brief could not read the answer, which says why in one line', async () => {
    const known = { client: 'Ann', insideLength: '9 in', joint: 'finger joint', personal: 'plain', home: 'London' };
    const at = typing(
      [/Which wood/, 'soft maple\r'],
      [/which of them: red maple, silver maple/, `${ctrlU}red maple\r`],
      [/promised for/, 'yesterday\r'],
      [/possible: a day that exists/, `${ctrlU}2026-11-20\r`],
      [/possible: today, 2026-11-27, or a later day/, `${ctrlU}2027-03-05\r`],
    );
    expect(await askBrief(known, box, at)).toEqual({ ...known, species: 'red maple', promised: '2027-03-05' });
    expect(at.shown()).not.toContain('Who is it for');
  });

  it('leave open what is not known yet', async () => {
    const at = typing(
      [/Who is it for/, '\r'],
      [/How large/, '\r'],
      [/Which corner joint/, '\u001b[B\u001b[B\r'],
      [/Which wood/, '\r'],
      [/made personal/, 'a rose and her letters\r'],
      [/Which letters/, 'A. E.\r'],
      [/Where will it live/, '\r'],
      [/promised for/, '\r'],
    );
    expect(await askBrief({}, box, at)).toEqual({
      personal: 'a rose and her letters',
      letters: 'A. E.',
      promised: '2027-01-22',
    });
  });

  it('of another piece than a box ask for neither sizes nor joint nor letters', async () => {
    const at = typing(
      [/Who is it for/, 'Ann\r'],
      [/Which wood/, 'cherry\r'],
      [/made personal/, 'her name on the back\r'],
      [/Where will it live/, 'Chicago\r'],
      [/promised for/, '\r'],
    );
    expect(Object.keys((await askBrief({}, { ...box, piece: 'bookcase' }, at)) ?? {})).toEqual([
      'client',
      'species',
      'personal',
      'home',
      'promised',
    ]);
  });

  it('are broken off by Ctrl-C', async () => {
    expect(await askBrief({}, box, typing([/Who is it for/, 'Ann\r'], [/How large/, `13 ${ctrlC}`]))).toBeUndefined();
    expect(await askBrief({ client: 'A', insideLength: '9 in' }, box, typing([/corner joint/, ctrlC]))).toBeUndefined();
  });
});
