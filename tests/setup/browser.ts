import type { TestProject } from 'vitest/node';
import { findBrowser } from './find-browser.js';

/** Before the browser tests: a Chromium, Chrome or Edge, installed if there is none. */
export default function browser(project: TestProject): void {
  project.provide('browser', findBrowser(console.log));
}

declare module 'vitest' {
  interface ProvidedContext {
    /** Path of the browser's program. */
    browser: string;
  }
}
