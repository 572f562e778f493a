import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { expect, inject, onTestFinished, test } from 'vitest';
import { drawnWidth, keepPicture, startBrowser } from './chromium.js';
import { lidSheet, savedPictures } from './lid-sheet.js';

test("the HTML that Jupyter's own nbconvert makes of a sheet shows its pictures, without a network", async () => {
  const output = mkdtempSync(join(tmpdir(), 'nbconvert-'));
  onTestFinished(() => rmSync(output, { recursive: true }));
  const { python, variables } = inject('python');
  const sheet = lidSheet(inject('commission'));
  const convert = ['-m', 'nbconvert', '--to', 'html', '--output-dir', output, '--output', 'sheet', sheet];
  const nbconvert = spawnSync(python, convert, { env: variables, encoding: 'utf8' });
  expect(nbconvert.status, nbconvert.stderr).toBe(0);

  const browser = await startBrowser();
  onTestFinished(() => browser.close());
  const page = await browser.newPage();
  await page.context().setOffline(true);
  await page.goto(pathToFileURL(join(output, 'sheet.html')).href);
  await keepPicture(page, 'nbconvert');
  const pictures = await page.locator('img').all();
  expect(pictures).toHaveLength(savedPictures(sheet));
  for (const picture of pictures) expect(await drawnWidth(picture)).toBeGreaterThan(0);
});
