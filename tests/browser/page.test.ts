import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, expect, inject, test } from 'vitest';
import { hostileClient } from '../setup/worked-commission.js';
import { drawnWidth, keepPicture, pictures, startBrowser } from './chromium.js';

let browser: Browser;
let page: Page;
const fetched: string[] = [];
const complaints: string[] = [];

beforeAll(async () => {
  browser = await startBrowser();
  page = await browser.newPage({ viewport: { width: 1000, height: 1200 } });
  page.on('request', (request) => fetched.push(request.url()));
  page.on('console', (message) => complaints.push(message.text()));
  page.on('pageerror', (error) => complaints.push(error.message));
  await page.goto(pathToFileURL(join(inject('commission'), 'index.html')).href);
});

beforeEach(() => page.emulateMedia({ media: 'screen' }));

afterAll(() => browser?.close());

test('the page of a commission opens from the disk, fetches nothing and has nothing to complain of', async () => {
  await keepPicture(page, 'page');
  expect(fetched.filter((url) => !url.startsWith('data:'))).toEqual([page.url()]);
  expect(complaints).toEqual([]);
});

test('it shows every picture and every formula', async () => {
  const images = await page.locator('img').all();
  expect(images.length).toBeGreaterThan(3);
  for (const image of images) expect(await drawnWidth(image)).toBeGreaterThan(0);

  const formulas = await page.locator('math').all();
  expect(formulas.length).toBeGreaterThan(5);
  for (const formula of formulas) {
    const { width, height } = (await formula.boundingBox()) ?? { width: 0, height: 0 };
    expect(Math.min(width, height)).toBeGreaterThan(5);
    const room = (await formula.locator('..').boundingBox())?.width ?? 0;
    expect(width, (await formula.textContent()) ?? '').toBeLessThanOrEqual(room);
  }
});

test("a client's name that is a script stays a name", async () => {
  expect(await page.getByText(hostileClient).first().isVisible()).toBe(true);
  expect(await page.locator('script').count()).toBe(0);
  expect(await page.title()).not.toBe('taken');
});

test('every link of the page leads to a place on it, the words of the trade to what they mean', async () => {
  const targets = await page.locator('a').evaluateAll((links) => links.map((link) => link.getAttribute('href') ?? ''));
  expect(targets.filter((target) => target.startsWith('#word-')).length).toBeGreaterThan(20);
  for (const target of new Set(targets)) expect(await page.locator(target).count(), target).toBe(1);
});

test('the code can be opened on screen and is left out in print', async () => {
  const code = page.locator('details.code').first();
  await code.locator('summary').click();
  expect(await code.locator('pre').isVisible()).toBe(true);
  await page.emulateMedia({ media: 'print' });
  for (const each of await page.locator('details.code').all()) expect(await each.isVisible()).toBe(false);
});

// The width between the margins, at 96 pixels to the inch.
test.each([
  ['A4', 8.27],
  ['Letter', 8.5],
])(
  'printed on %s a sheet takes six pages on average at most, and nothing runs off the edge',
  async (format, inches) => {
    await page.emulateMedia({ media: 'print' });
    await page.setViewportSize({ width: Math.floor((inches - 36 / 25.4) * 96), height: 1000 });
    expect(await page.evaluate('document.documentElement.scrollWidth - document.documentElement.clientWidth')).toBe(0);

    const pdf = await page.pdf({ format });
    mkdirSync(pictures, { recursive: true });
    writeFileSync(join(pictures, `page-${format}.pdf`), pdf);
    const papers = pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
    const sheets = await page.locator('.sheet').count();
    expect(papers).toBeGreaterThanOrEqual(sheets);
    expect(papers).toBeLessThanOrEqual(6 * sheets);
  },
);
