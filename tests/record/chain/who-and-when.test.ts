import { userInfo } from 'node:os';
import fc from 'fast-check';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { versionsInUse } from '../../../kernel-helpers/src/record/chain/versions.js';
import { localTime, whoDecides } from '../../../kernel-helpers/src/record/chain/who-and-when.js';

afterEach(() => vi.unstubAllEnvs());

describe('who, when and with what', () => {
  it('is the name that the shop gives, else the one the computer knows', () => {
    vi.stubEnv('COMMISSION_WHO', 'apprentice');
    expect(whoDecides()).toBe('apprentice');
    vi.stubEnv('COMMISSION_WHO', ' ');
    expect(whoDecides()).toBe(userInfo().username);
  });

  it.each([
    ['America/New_York', '2026-01-31T19:30:05-05:00'],
    ['Asia/Kolkata', '2026-02-01T06:00:05+05:30'],
    ['UTC', '2026-02-01T00:30:05+00:00'],
    ['America/St_Johns', '2026-01-31T21:00:05-03:30'],
  ])('has the date on the calendar of a shop in %s', (zone, expected) => {
    vi.stubEnv('TZ', zone);
    expect(localTime(new Date('2026-02-01T00:30:05Z'))).toBe(expected);
  });

  it('is the same moment, to the second, in any zone', () => {
    const zones = fc.constantFrom('America/New_York', 'Europe/Lisbon', 'Pacific/Chatham', 'Asia/Kathmandu');
    const seconds = fc.integer({ min: 1.5e9, max: 2.5e9 });
    fc.assert(
      fc.property(zones, seconds, (zone, second) => {
        vi.stubEnv('TZ', zone);
        expect(Date.parse(localTime(new Date(second * 1000)))).toBe(second * 1000);
      }),
    );
  });

  it('names Node, the helpers and the data files; the kernel only where there is one', () => {
    const versions = versionsInUse({ species: '1f' });
    expect(versions).toEqual({
      node: process.versions.node,
      helpers: expect.stringMatching(/^\d+\.\d+\.\d+$/),
      build: 'source',
      data: { species: '1f' },
    });
    vi.stubGlobal('__tslab__', {});
    expect(versionsInUse({})).toMatchObject({ tslab: '1.0.22', typescript: '5.0.4' });
    vi.unstubAllGlobals();
  });
});
