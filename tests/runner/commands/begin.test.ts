import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { PassThrough } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { begin } from '../../../kernel-helpers/src/runner/commands/begin.js';
import { testFolder } from '../../record/setting.js';

const templates = join(import.meta.dirname, '..', '..', '..', 'worksheets', 'commission');

/** Begins a recipe box in a daybook of its own. */
async function begun(values: Record<string, string>, over: object = {}) {
  const root = testFolder();
  const lines: string[] = [];
  const say = (line: string) => lines.push(line);
  const made = await begin({ root, templates, title: 'Recipe box', today: '2026-11-27', values, say, ...over });
  const folder = join(root, 'data', 'commissions', '2026-11-27-recipe-box');
  const brief = () => JSON.parse(readFileSync(join(folder, '01-brief.ipynb'), 'utf8'));
  return { root, folder, made, said: lines.join('\n'), brief: () => JSON.stringify(brief()) };
}

const whole = {
  client: 'Ann Example',
  inside: '13 1/4 x 8 x 5 in',
  joint: 'dovetail',
  wood: 'white oak',
  home: 'Denver',
  promised: '2027-03-05',
  personal: 'plain',
};

describe('a commission begun with options', () => {
  it('has them in its brief, and says that it is whole', async () => {
    const { said, brief } = await begun(whole);
    expect(said).toContain('Its brief is whole: 01-brief.ipynb');
    for (const typed of ["client: 'Ann Example'", "insideDepth: '5 in'", "species: 'white oak'", "home: 'Denver'"])
      expect(brief()).toContain(typed);
  });

  it('says which facts are still open', async () => {
    const { said } = await begun({ client: 'Ann Example', inside: '13 x 8 x 5' });
    expect(said).toContain(
      'fill in what is still open: the day it is promised for; the wood; the corner joint; how it is made personal; the place it will live at.',
    );
    expect((await begun({ piece: 'bookcase' })).said).not.toContain('the corner joint');
  });

  it.each([
    [{ wood: 'maple' }, /^--wood: "maple" given; which of them: .*red maple/],
    [{ home: 'Boston' }, /^--home: "Boston" given; nearest: New York/],
    [{ inside: '13 x 8' }, /^--inside: "13 x 8" given; possible: three sizes/],
    [{ inside: '13 x 8 x 50' }, /^--inside: "50 in" given; possible: 1\/2 in to 18 in/],
    [{ joint: 'glue' }, /^--joint: "glue" given; possible: through dovetail, finger joint/],
    [{ promised: '2026-11-01' }, /^--promised: "2026-11-01" given; possible: today, 2026-11-27, or a later day/],
    [{ promised: 'Friday' }, /^--promised: "Friday" given; possible: a day that exists/],
    [{ client: ' ' }, /^--client: "" given; possible: some words/],
    [{ piece: 'drawer', joint: 'dovetail' }, /^--joint is said of a box; a drawer is sized in its own sheet/],
    [{ piece: 'bed' }, /^piece: "bed" given; possible: box, bookcase/],
  ])('with %j is refused in one line, and nothing is made', async (values, message) => {
    const root = testFolder();
    await expect(begun(values, { root })).rejects.toThrow(message);
    expect(readdirSync(root)).toEqual([]);
  });
});

it('a commission whose questions are broken off leaves nothing behind', async () => {
  const input = Object.assign(new PassThrough(), { isTTY: true, setRawMode: () => undefined });
  const output = Object.assign(new PassThrough(), { columns: 100, rows: 40, isTTY: true });
  output.once('data', () => setTimeout(() => input.write('\u0003'), 5));
  const { root, folder, made, said } = await begun({}, { terminal: { input, output } });
  expect(made).toBe(false);
  expect(said).toBe('Nothing was made.');
  expect(existsSync(folder) || readdirSync(root).length > 0).toBe(false);
});

it('a promise is offered for a day on which the shop works, by its card', async () => {
  const input = Object.assign(new PassThrough(), { isTTY: true, setRawMode: () => undefined });
  const output = Object.assign(new PassThrough(), { columns: 100, rows: 40, isTTY: true });
  let shown = '';
  output.on('data', (text) => {
    shown += text;
    if (/Enter for 2027-/.test(shown)) setTimeout(() => input.write('\u0003'), 5);
  });
  const { promised, ...known } = whole;
  await begun(known, { terminal: { input, output } });
  // Eight weeks on is a Friday; the usual shop works on Monday, Tuesday and Thursday.
  expect(shown).toContain('When is it promised for? (Enter for 2027-01-25)');
});
