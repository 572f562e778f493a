import { appendFileSync, existsSync, mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { inspect } from 'node:util';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { openLesson } from '../../kernel-helpers/src/lesson/lesson.js';
import { commissionFolder, testFolder } from '../record/setting.js';

const question = { what: 'the sum', computed: 4.625, unit: 'in', within: '1/64 in' };
const lesson = (folder: string, name = '01-reading-a-tape') => openLesson(name, { folder, notify: () => {} });
const linesOf = (folder: string) => readFileSync(join(folder, 'progress.jsonl'), 'utf8').trimEnd().split('\n');

afterEach(() => vi.unstubAllEnvs());

describe('a lesson', () => {
  it('asks first: without a figure it prints nothing of the computed one and keeps nothing', () => {
    const folder = testFolder();
    const opened = lesson(folder);
    const asked = opened.predict({ ...question, yours: '' });
    expect(inspect(asked)).toMatch(/^the sum: your own figure first/);
    expect(JSON.stringify(asked) + inspect(asked)).not.toMatch(/4\.625|4 5\/8 in \(/);
    expect(opened.tried('the sum')).toBe(false);
    expect(readdirSync(folder)).toEqual([]);
  });

  it('keeps a figure with its day, who gave it and how it came out, in one file beside the lessons', () => {
    vi.stubEnv('COMMISSION_WHO', 'apprentice');
    const folder = testFolder();
    const opened = lesson(folder);
    expect(inspect(opened.predict({ ...question, yours: '4 1/2' }))).toMatch(
      /1\/8 in .*too little.*Kept in progress\.jsonl\.$/,
    );
    opened.predict({ ...question, yours: '4 5/8' });
    lesson(folder, '02-why-wood-moves').predict({ ...question, yours: '4 5/8' });
    expect(opened.tried('the sum')).toBe(true);
    expect(opened.progress()).toMatchObject([
      { who: 'apprentice', lesson: '01-reading-a-tape', what: 'the sum', yours: 4.5, computed: 4.625, hit: false },
      { who: 'apprentice', lesson: '01-reading-a-tape', what: 'the sum', yours: 4.625, hit: true },
    ]);
    const [first] = opened.progress();
    expect(Math.abs(Date.parse(first?.at ?? '') - Date.now())).toBeLessThan(60_000);
    expect(readdirSync(folder)).toEqual(['progress.jsonl']);
    expect(linesOf(folder)).toHaveLength(3);
  });

  it('run again with the same figure adds nothing', () => {
    const folder = testFolder();
    for (const _ of [1, 2, 3]) lesson(folder).predict({ ...question, yours: '4 1/2' });
    expect(linesOf(folder)).toHaveLength(1);
  });

  it('does not stumble over a line that was never finished', () => {
    const folder = testFolder();
    lesson(folder).predict({ ...question, yours: '4 1/2' });
    appendFileSync(join(folder, 'progress.jsonl'), '{"at":"2026-');
    lesson(folder).predict({ ...question, yours: '4 5/8' });
    expect(
      lesson(folder)
        .progress()
        .map(({ yours }) => yours),
    ).toEqual([4.5, 4.625]);
  });

  it("keeps nothing in a commission's folder, and says so", () => {
    const folder = commissionFolder();
    const said: string[] = [];
    const opened = openLesson('01-reading-a-tape', { folder, notify: (line) => said.push(line) });
    opened.predict({ ...question, yours: '4 5/8' });
    expect(opened.progress()).toHaveLength(1);
    expect(existsSync(join(folder, 'progress.jsonl'))).toBe(false);
    expect(said.join()).toMatch(/not kept/);
  });

  it('says in one line when its folder cannot be written', () => {
    const folder = join(testFolder(), 'gone');
    expect(() => lesson(folder).predict({ ...question, yours: '4 5/8' })).toThrow(
      /^[^\n]*progress\.jsonl cannot be written[^\n]*$/,
    );
    mkdirSync(folder);
    expect(lesson(folder).predict({ ...question, yours: '4 5/8' }).prediction?.hit).toBe(true);
  });
});
