import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { type Browser, chromium, type Locator, type Page } from 'playwright-core';
import { inject } from 'vitest';

/** Where a look at what the tests saw is kept. */
export const pictures = join(import.meta.dirname, '..', 'reports', 'browser');

/** Starts the browser that the set-up found, without the errands that browsers run for themselves. */
export function startBrowser(): Promise<Browser> {
  return chromium.launch({
    executablePath: inject('browser'),
    args: [
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--disable-quic',
      // As root, as in a container, Chromium starts no other way.
      ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
    ],
  });
}

/** Keeps a picture of the page, or of a part of it, in tests/reports/browser/. */
export async function keepPicture(view: Page | Locator, name: string): Promise<void> {
  mkdirSync(pictures, { recursive: true });
  await view.screenshot({ path: join(pictures, `${name}.png`) });
}

/** The width that the browser found in a picture's own data; 0 when it could not draw it. */
export function drawnWidth(picture: Locator): Promise<number> {
  return picture.evaluate((element) => (element as unknown as { naturalWidth: number }).naturalWidth);
}
