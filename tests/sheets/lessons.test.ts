import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Kernel } from '../../kernel-helpers/src/runner/kernel/kernel.js';
import type { Output } from '../../kernel-helpers/src/runner/kernel/outputs.js';
import { startKernel } from '../../kernel-helpers/src/runner/kernel/start-kernel.js';
import { type Cell, readNotebook } from '../../kernel-helpers/src/runner/sheets/notebook.js';
import { codeCells } from '../../kernel-helpers/src/runner/sheets/run-sheet.js';
import { lessonAnswers } from './lesson-answers.js';
import { root } from './setting.js';

const folder = join(root, 'worksheets', 'lessons');
const names = readdirSync(folder)
  .filter((file) => file.endsWith('.ipynb'))
  .map((file) => file.replace('.ipynb', ''))
  .sort();

const textOf = (outputs: Output[]) => outputs.map((output) => JSON.stringify(output)).join('\n');
const asks = ({ source }: Cell) => source.includes('lesson.predict(');
const withFigure = (source: string, figure: string) =>
  source.replace(/yours: ''/, () => `yours: ${JSON.stringify(figure)}`);

test('there are eleven lessons, and an answer for every question of each', () => {
  expect(names).toEqual(Object.keys(lessonAnswers));
  expect(names).toHaveLength(11);
});

describe.each(names)('%s', (name) => {
  const cells = codeCells(readNotebook(join(folder, `${name}.ipynb`)));
  const questions = cells.filter(asks);
  const answers = lessonAnswers[name] ?? {};
  let work: string;
  let kernel: Kernel;

  /** Runs cells one after the other, as an apprentice does, and gives what each showed. */
  async function run(sources: { id: string; source: string }[]): Promise<Record<string, string>> {
    const shown: Record<string, string> = {};
    for (const { id, source } of sources) {
      const { status, outputs } = await kernel.execute(source, { seconds: 60 });
      expect(`${id} ${status} ${status === 'ok' ? '' : textOf(outputs)}`).toBe(`${id} ok `);
      shown[id] = textOf(outputs);
    }
    return shown;
  }

  beforeAll(async () => {
    mkdirSync(join(root, 'tests', '.work'), { recursive: true });
    work = mkdtempSync(join(root, 'tests', '.work', 'lesson-'));
    kernel = await startKernel({ cwd: work, env: { TMPDIR: work, TEMP: work, TMP: work } });
  });
  afterAll(async () => {
    await kernel.shutdown();
    rmSync(work, { recursive: true, force: true, maxRetries: 5 });
  });

  test('has two or three predictions on the way and one figure to get, and ends with what was tried', () => {
    expect(questions.length).toBeGreaterThanOrEqual(3);
    expect(questions.length).toBeLessThanOrEqual(4);
    expect(questions.at(-1)?.id).toBe('final');
    expect(questions.map(({ id }) => id)).toEqual(Object.keys(answers));
    expect(cells.at(-1)?.source).toContain('lesson.progress()');
    expect(cells.map(({ source }) => source).join()).toContain(`openLesson('${name}')`);
  });

  test('runs from top to bottom untouched, asks for each figure, and gives none away', async () => {
    const blank = await run(cells);
    for (const { id } of questions) expect(blank[id]).toContain('your own figure first');
    expect(existsSync(join(work, 'progress.jsonl'))).toBe(false);

    const filled = await run(
      cells.map((cell) => ({ id: cell.id, source: withFigure(cell.source, answers[cell.id]?.right ?? '') })),
    );
    const hits = questions.filter(({ id }) => / A hit[.:]/.test(filled[id] ?? ''));
    expect(hits.map(({ id }) => id)).toEqual(questions.map(({ id }) => id));

    const computed = questions.map(({ id }) => / it is (.+?)\. A hit/.exec(filled[id] ?? '')?.[1] ?? 'nothing found');
    const all = Object.values(blank).join('\n');
    // A bare digit stands in any sheet by chance.
    for (const figure of computed.filter((text) => text.length > 1)) expect(all).not.toContain(figure);
    expect(filled.progress).toContain(`${questions.length} of ${questions.length} a hit`);
  });

  test('names the step to look at for a usual wrong figure, and keeps each try with its day', async () => {
    const wrong = await run(
      questions.map(({ id, source }) => ({ id, source: withFigure(source, answers[id]?.wrong ?? '') })),
    );
    for (const { id } of questions) {
      expect(wrong[id]).toMatch(/You are .* too (much|little)/);
      expect(wrong[id]).toMatch(answers[id]?.step ?? 'an answer');
    }
    const tried = readFileSync(join(work, 'progress.jsonl'), 'utf8').trimEnd().split('\n');
    expect(tried.map((line) => JSON.parse(line).hit)).toEqual([
      ...questions.map(() => true),
      ...questions.map(() => false),
    ]);
    for (const line of tried)
      expect(JSON.parse(line)).toMatchObject({ lesson: name, at: expect.stringMatching(/^20\d\d-/) });
  });
});
