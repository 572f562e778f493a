import { spawnSync } from 'node:child_process';
import { existsSync, linkSync, readdirSync, writeFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it, onTestFinished, vi } from 'vitest';
import { breakLock, type Holder, readHolder, sweepLock, withLock } from '../../kernel-helpers/src/disk/lock.js';
import { ShopError } from '../../kernel-helpers/src/measure/shop-error.js';
import { must, testFolder } from '../record/setting.js';

vi.mock('node:fs', async (original) => {
  const fs = await original<typeof import('node:fs')>();
  return { ...fs, linkSync: vi.fn(fs.linkSync) };
});

/** The number of a process that has ended. */
function deadProcess(): number {
  return spawnSync(process.execPath, ['-e', '']).pid;
}

function holder(over: Partial<Holder> = {}): Holder {
  const pid = over.pid ?? deadProcess();
  return { pid, host: hostname(), token: `${pid}-0123456789abcdef`, since: '2026-03-12T19:30:00Z', ...over };
}

function leaveLock(path: string, left: Holder): Holder {
  writeFileSync(path, JSON.stringify(left));
  return left;
}

describe('the lock beside a record', () => {
  it('is there, with its holder, only while the work is done', () => {
    const lock = join(testFolder(), 'lock');
    const seen = withLock(lock, () => readHolder(lock));
    expect(seen).toMatchObject({ pid: process.pid, host: hostname() });
    expect(readdirSync(join(lock, '..'))).toEqual([]);
  });

  it('is given back when the work fails', () => {
    const lock = join(testFolder(), 'lock');
    const fail = () => withLock(lock, () => expect.unreachable('the work fails'));
    expect(fail).toThrow('the work fails');
    expect(readdirSync(join(lock, '..'))).toEqual([]);
  });

  it('is waited for, then given up with a message that names file and holder; the work is not done', () => {
    const lock = join(testFolder(), 'lock');
    const other = leaveLock(lock, holder({ pid: process.ppid }));
    let worked = false;
    const take = () =>
      withLock(
        lock,
        () => {
          worked = true;
        },
        60,
      );
    expect(take).toThrow(ShopError);
    expect(take).toThrow(`process ${process.ppid} on ${hostname()}`);
    expect(take).toThrow('delete that file');
    expect(worked).toBe(false);
    expect(readHolder(lock)).toEqual(other);
    expect(readdirSync(join(lock, '..'))).toEqual(['lock']);
  });

  it('sleeps between looking, instead of spinning', () => {
    const lock = join(testFolder(), 'lock');
    leaveLock(lock, holder({ pid: process.ppid }));
    const wait = vi.spyOn(Atomics, 'wait');
    onTestFinished(() => wait.mockRestore());
    expect(() => withLock(lock, () => {}, 60)).toThrow(ShopError);
    const naps = wait.mock.calls.map(([, , , ms]) => must(ms));
    expect(naps.length).toBeGreaterThan(0);
    expect(Math.min(...naps)).toBeGreaterThanOrEqual(5);
  });

  it('is taken over from a process that is dead', () => {
    const lock = join(testFolder(), 'lock');
    leaveLock(lock, holder());
    expect(withLock(lock, () => readHolder(lock)?.pid)).toBe(process.pid);
    expect(readdirSync(join(lock, '..'))).toEqual([]);
  });

  it('is left alone when its process runs on another machine, where nobody here can see it', () => {
    const lock = join(testFolder(), 'lock');
    leaveLock(lock, holder({ host: 'the-other-bench' }));
    expect(() => withLock(lock, () => {}, 40)).toThrow('the-other-bench');
  });

  it('that an interrupted cell of this kernel left is taken over by its next cell', () => {
    const lock = join(testFolder(), 'lock');
    const left = must(withLock(lock, () => readHolder(lock)));
    leaveLock(lock, left);
    expect(withLock(lock, () => readHolder(lock)?.token)).not.toBe(left.token);
  });

  it('is not removed by a slow waiter that saw it dead before a faster one took it over', () => {
    const lock = join(testFolder(), 'lock');
    const dead = leaveLock(lock, holder());
    breakLock(lock, dead);
    expect(existsSync(lock)).toBe(false);
    const kept = withLock(lock, () => {
      breakLock(lock, dead);
      return readHolder(lock);
    });
    expect(kept?.pid).toBe(process.pid);
  });

  it('is removed by one waiter at a time, even when an earlier one died while removing it', () => {
    const lock = join(testFolder(), 'lock');
    const dead = leaveLock(lock, holder());
    const removing = `${lock}.${dead.token}`;
    leaveLock(removing, holder({ pid: process.ppid }));
    expect(() => withLock(lock, () => {}, 40)).toThrow(ShopError);
    expect(readHolder(lock)).toEqual(dead);
    leaveLock(removing, holder({ token: '1-died-while-removing' }));
    expect(withLock(lock, () => readHolder(lock)?.pid)).toBe(process.pid);
  });

  it('works on a drive without hard links', () => {
    const link = vi.mocked(linkSync);
    onTestFinished(() => void link.mockReset());
    link.mockImplementation(() => {
      throw Object.assign(new Error('operation not permitted'), { code: 'EPERM' });
    });
    const lock = join(testFolder(), 'lock');
    expect(withLock(lock, () => readHolder(lock)?.pid)).toBe(process.pid);
    const other = leaveLock(lock, holder({ pid: process.ppid }));
    expect(() => withLock(lock, () => {}, 40)).toThrow(ShopError);
    expect(readHolder(lock)).toEqual(other);
    expect(readdirSync(join(lock, '..'))).toEqual(['lock']);
  });

  it('sweeps up what killed processes left beside it, and nothing of a living one', () => {
    const folder = testFolder();
    const lock = join(folder, 'lock');
    const living = holder({ pid: process.ppid });
    leaveLock(`${lock}.${living.token}`, living);
    leaveLock(`${lock}.77-removing`, holder());
    writeFileSync(`${lock}.${deadProcess()}-0011`, '');
    writeFileSync(join(folder, 'lock-notes.txt'), '');
    withLock(lock, () => sweepLock(lock));
    expect(readdirSync(folder).sort()).toEqual(['lock-notes.txt', `lock.${living.token}`]);
  });
});
