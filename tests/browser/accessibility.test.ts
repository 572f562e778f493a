import { readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import axe, { type AxeResults } from 'axe-core';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { writeContents } from '../../kernel-helpers/src/runner/pages/write-contents.js';
import { keepPicture, startBrowser } from './chromium.js';

const commission = inject('commission');
const contents = join(dirname(commission), 'index.html');
const papers = readdirSync(commission).filter((file) => file.endsWith('.html'));
const pages = [
  ...papers.map((file) => [file, join(commission, file)] as const),
  ['the page of contents', contents] as const,
];

let browser: Browser;
let page: Page;

beforeAll(async () => {
  await writeContents(dirname(commission), join(import.meta.dirname, '..', '..', 'worksheets'));
  browser = await startBrowser();
  page = await browser.newPage();
});

afterAll(() => browser?.close());

async function open(path: string, width = 1280): Promise<void> {
  await page.setViewportSize({ width, height: 900 });
  await page.goto(pathToFileURL(path).href);
}

describe.each(pages)('%s', (name, path) => {
  // 1280 pixels at twice the size are 640.
  test.each([1280, 640])('has no fault in the check for accessibility, %i pixels wide', async (width) => {
    await open(path, width);
    await page.evaluate(axe.source);
    const { violations } = (await page.evaluate('axe.run()')) as AxeResults;
    const faults = violations.flatMap(({ id, impact, nodes }) => nodes.map(({ html }) => `${impact} ${id}: ${html}`));
    expect(faults).toEqual([]);
  });

  test('is read at twice its size without moving it sideways', async () => {
    await open(path, 640);
    await keepPicture(page, `twice-${name.replaceAll(' ', '-')}`);
    const over = 'document.documentElement.scrollWidth - document.documentElement.clientWidth';
    expect(await page.evaluate(over)).toBe(0);
  });
});

test('with the keyboard alone one gets to every link and every fold of the page, and sees where one is', async () => {
  await open(join(commission, 'index.html'));
  const count = await page.locator('a[href], summary, [tabindex="0"]').count();
  const unseen: string[] = [];
  for (let i = 0; i < count; i++) {
    await page.keyboard.press('Tab');
    const at = (await page.evaluate(`(() => {
      const { tagName, textContent } = document.activeElement;
      const { outlineStyle, outlineWidth } = getComputedStyle(document.activeElement);
      return { is: tagName + ' ' + textContent, outline: outlineStyle === 'none' ? 0 : parseFloat(outlineWidth) };
    })()`)) as { is: string; outline: number };
    if (at.is.startsWith('BODY') || at.outline < 2) unseen.push(at.is);
  }
  expect(unseen).toEqual([]);

  const fold = page.locator('details').first();
  await fold.locator('summary').focus();
  await page.keyboard.press('Enter');
  expect(await fold.locator('pre').isVisible()).toBe(true);
});

test('every picture of the page says in words what it shows, all but the parts drawn one from another with its figures', async () => {
  await open(join(commission, 'index.html'));
  const words = await page
    .locator('img')
    .evaluateAll((images) => images.map((image) => image.getAttribute('alt') ?? ''));
  expect(words.length).toBeGreaterThan(10);
  for (const each of words) expect(each).toMatch(/taken apart, |\d.{20}/s);
});
