import { cpSync, existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { formatLength } from '../../kernel-helpers/src/measure/length.js';
import { readNotebook } from '../../kernel-helpers/src/runner/sheets/notebook.js';
import { drawnWidth, keepPicture, startBrowser } from './chromium.js';
import { lidSheet, savedPictures } from './lid-sheet.js';
import { type RunningLab, startLab } from './start-lab.js';

let browser: Browser;
let lab: RunningLab;
let page: Page;
let folder: string;
let sheet: string;

const soon = { timeout: 60_000 };

beforeAll(async () => {
  folder = join(dirname(inject('commission')), '2026-03-03-in-jupyterlab');
  cpSync(inject('commission'), folder, { recursive: true });
  sheet = lidSheet(folder);
  lab = await startLab();
  browser = await startBrowser();
  page = await browser.newPage({ viewport: { width: 1280, height: 1000 } });
  page.setDefaultTimeout(soon.timeout);
  await page.goto(lab.addressOf(sheet));
  await page.getByText('TypeScript | Idle').waitFor();
});

afterAll(async () => {
  await browser?.close();
  await lab?.stop();
});

test('a saved sheet shows its pictures before anyone trusts it', async () => {
  await page.getByTitle('Notebook not trusted').waitFor();
  const pictures = page.locator('.jp-OutputArea-output img');
  expect(savedPictures(sheet)).toBeGreaterThan(2);
  await expect.poll(() => pictures.count(), soon).toBe(savedPictures(sheet));
  for (const picture of await pictures.all()) {
    await picture.scrollIntoViewIfNeeded();
    await expect.poll(() => drawnWidth(picture), soon).toBeGreaterThan(0);
  }
  await keepPicture(page, 'lab-untrusted');
});

test('amounts in dollars stay amounts: only a formula is set as mathematics', async () => {
  const quote = await browser.newPage();
  quote.setDefaultTimeout(soon.timeout);
  await quote.goto(
    lab.addressOf(join(folder, '09-hours-cost-quote.ipynb')).replace('workspaces/test', 'workspaces/quote'),
  );
  await expect.poll(() => quote.locator('.jp-Notebook').textContent(), soon).toMatch(/You ask \$[\d,.]+, tax \$/);
  const typeset = quote.locator('.jp-OutputArea-output mjx-container');
  await expect.poll(() => typeset.count(), soon).toBeGreaterThan(0);
  expect(await typeset.count()).toBe(await quote.locator('.jp-RenderedLatex mjx-container').count());
  await quote.close();
});

test('a changed parameter changes the plot, the width to plane and the record', async () => {
  const year = page.locator('.jp-CodeCell', { hasText: 'show(clearancePlot({ fit' }).locator('img');
  const plotBefore = await year.getAttribute('src');
  const widthBefore = recordedWidth();
  expect(await sheetText()).toContain(widthBefore);

  const cell = readNotebook(sheet).cells.find(({ metadata }) => metadata.tags?.includes('parameters'));
  const asked = cell?.source.replace('ringAngle: 20,', 'ringAngle: 80,').replace('decided: false', 'decided: true');
  await writeParameters(asked ?? '');
  await page.getByRole('menuitem', { name: 'Run', exact: true }).click();
  await page.getByRole('menuitem', { name: 'Run All Cells', exact: true }).click();

  await expect.poll(recordedWidth, soon).not.toBe(widthBefore);
  await expect.poll(sheetText, soon).toContain(recordedWidth());
  expect(await year.getAttribute('src')).not.toBe(plotBefore);
  await keepPicture(year, 'lab-changed-plot');
});

test('the top of the sheet says what was decided, what moved, and what was not run since', async () => {
  const top = page.locator('.daybook-top');
  await expect
    .poll(async () => (await top.textContent())?.replaceAll('\u00a0', ' '), soon)
    .toMatch(
      /^Plane to [\d.]+ in\. Decided, entry \d+\.What movedAs decided on \d{4}-\d\d-\d\dNowLid planed to[\d.]+ in[\d.]+ in/,
    );
  expect(await top.textContent()).toMatch(/Stock.*not run since.*Quote.*not run since/);
  await top.scrollIntoViewIfNeeded();
  await keepPicture(top, 'lab-what-moved');
  expect(readFileSync(join(folder, 'index.html'), 'utf8')).toMatch(
    /This page is behind\..*Since then: lid, entry \d+: plane to/,
  );
});

test('Ctrl-C ends JupyterLab with its kernels, even one in the middle of a cell', async () => {
  const pidFile = join(folder, 'kernel-pid');
  await writeParameters(
    "import { writeFileSync } from 'node:fs'; import { pid } from 'node:process'; writeFileSync('kernel-pid', String(pid)); for (;;) {}",
  );
  await page.keyboard.press('Control+Enter');
  await expect.poll(() => existsSync(pidFile), soon).toBe(true);
  const kernel = Number(readFileSync(pidFile, 'utf8'));
  expect(isRunning(kernel)).toBe(true);

  expect(await lab.stop()).toBe(0);
  expect(isRunning(kernel)).toBe(false);
});

/** Types a new text over the cell of parameters. */
async function writeParameters(source: string): Promise<void> {
  await parameters().click();
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.insertText(source);
}

function parameters(): Locator {
  return page.locator('.jp-CodeCell').first().locator('.cm-content');
}

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch {
    return false;
  }
}

/** The width of the lid by the record's latest decision, as the sheet writes it. */
function recordedWidth(): string {
  const lines = readFileSync(join(folder, 'record.jsonl'), 'utf8').trim().split('\n');
  const lid = lines.map((line) => JSON.parse(line)).findLast((entry) => entry.what === 'lid');
  return formatLength(lid.results.fittedWidth, { system: 'caliper' });
}

async function sheetText(): Promise<string> {
  return (await page.locator('.jp-Notebook').textContent())?.replaceAll('\u00a0', ' ') ?? '';
}
