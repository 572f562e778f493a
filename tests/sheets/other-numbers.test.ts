import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { checkCommission } from '../../kernel-helpers/src/record/check/check.js';
import { changeParameter, command, decided, templateCommission } from './setting.js';

let folder: string;
let remove: () => void;
let worked: ReturnType<typeof command>;

// A metric box of one's own: cherry, finger joints, another town.
beforeAll(() => {
  ({ folder, remove } = templateCommission());
  const brief = (from: string, to: string) => changeParameter(folder, '01-brief.ipynb', from, to);
  brief("'9 1/2 in'", "'240 mm'");
  brief("'6 1/4 in'", "'90 mm'");
  brief("'4 in'", "'60 mm'");
  brief('walnut-black', 'cherry-black');
  brief('shop: {}', "shop: { units: 'mm' }");
  brief('chicago-ohare', 'london');
  brief("joint: 'through dovetail'", "joint: 'finger joint'");
  changeParameter(folder, '05-joints.ipynb', 'fingers: 8', 'fingers: 6');
  // The front is shorter than a router table takes by hand.
  changeParameter(folder, '06-grooves-and-bottom.ipynb', 'shop: {}', "shop: { router: { machine: 'hand router' } }");
  changeParameter(folder, '08-lettering-and-surface.ipynb', "height: '3/4 in'", "height: '10 mm'");
  worked = command('work', folder, '--decide');
});
afterAll(() => remove());

test('a metric box with finger joints is worked from brief to record', () => {
  expect(worked.stderr).toBe('');
  expect(worked.status).toBe(0);
  expect(checkCommission(folder).entries.map(({ what }) => what)).toEqual(decided);
});

test('its page speaks of fingers and millimetres, not of dividers', () => {
  const page = readFileSync(join(folder, 'index.html'), 'utf8');
  expect(page).toContain('6 fingers of');
  expect(page).toContain('Clearance of the lid by month');
  expect(page).not.toContain('The divider walk');
});
