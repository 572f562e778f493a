import { randomBytes } from 'node:crypto';
import { constants, copyFileSync, linkSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { basename, dirname, join } from 'node:path';
import { ShopError } from '../measure/shop-error.js';
import { pause } from './durable.js';

/** Who holds a lock, as the lock file says it. @internal */
export interface Holder {
  pid: number;
  host: string;
  /** Different for every taking of a lock. */
  token: string;
  since: string;
}

const patience = 10_000;

/**
 * Does a piece of work while no other process does work under the same lock file.
 *
 * The lock file appears whole, with its holder in it, by a hard link, so a process killed at any moment leaves either
 * no lock or one that names it. A lock whose process is dead is removed.
 *
 * @param path  the lock file; its folder must exist
 * @param wait  how long to wait for another holder, ms
 * @throws ShopError  when another process keeps the lock for longer than that; the work was not done
 * @internal
 */
export function withLock<T>(path: string, work: () => T, wait = patience): T {
  const holder = takeLock(path, wait);
  try {
    return work();
  } finally {
    releaseLock(path, holder);
  }
}

/**
 * Removes a lock seen to be held by a dead process.
 *
 * Two waiters may both have seen it, and the slower one must not remove the lock that the faster one has taken since.
 * So removing has a lock of its own, named after the dead holder: whoever has it looks again whether the lock is
 * still that holder's. A waiter that dies here leaves a second dead lock, which is removed in the same way.
 *
 * @internal
 */
export function breakLock(path: string, dead: Holder, wait = patience): void {
  withLock(`${path}.${dead.token}`, () => releaseLock(path, dead), wait);
}

/** The lock file's holder, or undefined when there is no lock (any more). @internal */
export function readHolder(path: string): Holder | undefined {
  try {
    return JSON.parse(readFileSync(path, 'utf8'));
  } catch {
    return undefined;
  }
}

/** Removes files that processes killed while taking or removing this lock left behind. Call it under the lock. @internal */
export function sweepLock(path: string): void {
  const left = `${basename(path)}.`;
  for (const name of readdirSync(dirname(path))) {
    if (!name.startsWith(left)) continue;
    const file = join(dirname(path), name);
    // Killed before its file was written: the name's own number tells whose it was.
    const holder = readHolder(file) ?? {
      pid: Number.parseInt(name.slice(left.length), 10),
      host: hostname(),
      token: '',
    };
    if (isDead(holder)) rmSync(file, { force: true });
  }
}

// Locks that this kernel asked for. One that is still there when the next is wanted was left by an interrupted cell.
const asked = new Set<string>();

function takeLock(path: string, wait: number): Holder {
  const token = `${process.pid}-${randomBytes(8).toString('hex')}`;
  const holder: Holder = { pid: process.pid, host: hostname(), token, since: new Date().toISOString() };
  const own = `${path}.${token}`;
  const giveUp = performance.now() + wait;
  asked.add(token);
  try {
    writeFileSync(own, JSON.stringify(holder));
    while (!claim(own, path, holder)) {
      const other = readHolder(path);
      if (performance.now() > giveUp) throw new ShopError(stillLocked(path, other, wait));
      if (other && isDead(other)) breakLock(path, other, wait);
      else pause(5 + 20 * Math.random());
    }
  } finally {
    rmSync(own, { force: true });
  }
  return holder;
}

function releaseLock(path: string, { token }: Holder): void {
  if (readHolder(path)?.token !== token) return;
  // Retried, since Windows keeps a file for as long as a waiter is just reading it; only a recursive removal retries.
  rmSync(path, { force: true, recursive: true, maxRetries: 10, retryDelay: 20 });
}

function claim(own: string, path: string, holder: Holder): boolean {
  try {
    linkSync(own, path);
    return true;
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === 'EEXIST') return false;
    // Another machine on the same drive cannot know that this process is alive, and may have swept its file away.
    if (code === 'ENOENT') {
      writeFileSync(own, JSON.stringify(holder));
      return false;
    }
  }
  // Some memory sticks and network drives know no hard links.
  try {
    copyFileSync(own, path, constants.COPYFILE_EXCL);
    return true;
  } catch {
    return false;
  }
}

function isDead({ pid, host, token }: Pick<Holder, 'pid' | 'host' | 'token'>): boolean {
  if (host !== hostname()) return false;
  if (pid === process.pid) return asked.has(token);
  try {
    process.kill(pid, 0);
    return false;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'ESRCH';
  }
}

function stillLocked(path: string, other: Holder | undefined, wait: number): string {
  const who = other ? `process ${other.pid} on ${other.host} since ${other.since}` : 'a process that left no name';
  return `${basename(path)} in ${dirname(path)} is held by ${who} and did not come free in ${Math.round(wait / 1000)} s; nothing was recorded. Run the cell again; if no other sheet is running, delete that file first.`;
}
