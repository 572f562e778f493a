/**
 * What a sheet's type checker knows of Node: the console, timers, and that Node's modules exist (as `any`).
 *
 * The kernel reads these types at each start, and Node's own are so large that they
 * took half of the time until a first cell could run (measured: 1.2 s with it, 0.6 s with this). Sheets hardly ever speak to
 * Node itself. The helpers and the tests are checked against the whole of Node's types, which is installed as `node-types`.
 */
declare module 'node:*';

interface Console {
  log(...items: unknown[]): void;
  info(...items: unknown[]): void;
  warn(...items: unknown[]): void;
  error(...items: unknown[]): void;
  table(data: unknown, columns?: readonly string[]): void;
}
declare var console: Console;

declare namespace NodeJS {
  interface Timeout {
    hasRef(): boolean;
  }
}
declare function setTimeout(work: (...items: never[]) => void, milliseconds?: number): NodeJS.Timeout;
declare function clearTimeout(timeout: NodeJS.Timeout | undefined): void;
