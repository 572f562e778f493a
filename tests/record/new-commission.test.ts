import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ShopError } from '../../kernel-helpers/src/measure/shop-error.js';
import { newCommission, slug } from '../../kernel-helpers/src/record/new-commission.js';
import { usualShop } from '../../kernel-helpers/src/record/shop-card/shop-card.js';
import { open, testFolder, writeSheet } from './setting.js';

function shop(): { root: string; templates: string } {
  const root = testFolder();
  const templates = join(root, 'worksheets', 'commission');
  mkdirSync(templates, { recursive: true });
  writeSheet(templates, '02-sizing.ipynb', "job.need('brief')");
  writeSheet(templates, '01-brief.ipynb', "job.decide('brief', {})");
  return { root, templates };
}

const order = { title: 'Tea chest', date: '2026-03-12' };

describe('a new commission', () => {
  it('is a dated folder with a copy of every template sheet and of the shop card', () => {
    const { root, templates } = shop();
    writeFileSync(join(templates, 'notes.txt'), 'not a sheet');
    const made = newCommission({ root, templates, ...order });
    const folder = join(root, 'data', 'commissions', '2026-03-12-tea-chest');
    const sheets = ['01-brief.ipynb', '02-sizing.ipynb'];
    expect(made).toEqual({ name: '2026-03-12-tea-chest', folder, sheets });
    expect(readdirSync(folder).sort()).toEqual([...sheets, 'shop.json']);
    expect(JSON.parse(readFileSync(join(folder, 'shop.json'), 'utf8'))).toEqual(usualShop());
    for (const name of sheets) expect(readFileSync(join(folder, name))).toEqual(readFileSync(join(templates, name)));
    expect(open(folder).practice).toBe(false);
  });

  it('comes with days as long after its beginning as the templates have them, on the same day of the week', () => {
    const { root, templates } = shop();
    writeSheet(templates, '01-brief.ipynb', "const parameters = { promised: '2027-02-12', closed: ['2026-12-24'] };");
    const promised = (date: string) => {
      const { folder } = newCommission({ root, templates, ...order, date });
      return /promised: '(.*?)', closed: \['(.*?)'\]/
        .exec(readFileSync(join(folder, '01-brief.ipynb'), 'utf8'))
        ?.slice(1);
    };
    expect(promised('2026-11-25')).toEqual(['2027-02-12', '2026-12-24']);
    expect(promised('2026-12-01')).toEqual(['2027-02-12', '2026-12-24']);
    expect(promised('2028-02-29')).toEqual(['2028-05-12', '2026-12-24']); // 65 weeks later, a Friday again
    expect(promised('2026-01-02')).toEqual(['2027-02-12', '2026-12-24']);
  });

  it('of another piece has its own sheets and those of the box that serve every piece', () => {
    const { root, templates } = shop();
    for (const name of ['03-wood-and-air.ipynb', '05-joints.ipynb', '10-days-and-record.ipynb'])
      writeSheet(templates, name, '1');
    const pieces = join(root, 'worksheets', 'pieces');
    mkdirSync(join(pieces, 'bookcase'), { recursive: true });
    mkdirSync(join(pieces, 'notes'));
    writeSheet(pieces, '01-brief.ipynb', "job.decide('brief', { any })");
    writeSheet(join(pieces, 'bookcase'), '02-sizing.ipynb', "job.decide('sizing', { bookcase })");
    const { folder, sheets } = newCommission({ root, templates, ...order, piece: 'bookcase' });
    expect(sheets).toEqual(['01-brief.ipynb', '02-sizing.ipynb', '03-wood-and-air.ipynb', '10-days-and-record.ipynb']);
    expect(readdirSync(folder).sort()).toEqual([...sheets, 'shop.json']);
    expect(readFileSync(join(folder, '01-brief.ipynb'), 'utf8')).toContain('any');
    expect(readFileSync(join(folder, '02-sizing.ipynb'), 'utf8')).toContain('bookcase');

    const unknown = (piece: string) => () => newCommission({ root, templates, ...order, title: 'Other', piece });
    for (const piece of ['bed', '', 'notes', '../commission'])
      expect(unknown(piece)).toThrow(`piece: "${piece}" given; possible: box, bookcase`);
  });

  it('leads from its sheets to the same sheets of other folders as the templates do', () => {
    const { root, templates } = shop();
    writeSheet(templates, '03-wood-and-air.ipynb', '1');
    const sheet = join(templates, '03-wood-and-air.ipynb');
    const source = ['A [tail](../glossary.ipynb#Tail), and [stock](07-stock.ipynb).'];
    writeFileSync(sheet, JSON.stringify({ cells: [{ cell_type: 'markdown', source }] }));
    const { folder } = newCommission({ root, templates, ...order });
    const [tail = '', stock] = [
      ...readFileSync(join(folder, '03-wood-and-air.ipynb'), 'utf8').matchAll(/\]\(([^)]+)/g),
    ].map((match) => match[1]);
    expect(join(folder, tail)).toBe(join(root, 'worksheets', 'glossary.ipynb#Tail'));
    expect(stock).toBe('07-stock.ipynb');
  });

  it('never touches one that is there already', () => {
    const { root, templates } = shop();
    const { folder } = newCommission({ root, templates, ...order });
    writeFileSync(join(folder, '01-brief.ipynb'), 'worked');
    const again = () => newCommission({ root, templates, ...order, title: 'TEA  CHEST!' });
    expect(again).toThrow(ShopError);
    expect(again).toThrow('stays as it is');
    expect(readFileSync(join(folder, '01-brief.ipynb'), 'utf8')).toBe('worked');
    expect(readdirSync(dirname(folder))).toEqual(['2026-03-12-tea-chest']);
  });

  it('leaves nothing behind when a sheet cannot be copied', () => {
    const { root, templates } = shop();
    mkdirSync(join(templates, '03-not-a-file.ipynb'));
    expect(() => newCommission({ root, templates, ...order })).toThrow(ShopError);
    expect(readdirSync(join(root, 'data', 'commissions'))).toEqual([]);
  });

  it.each(['2026-02-30', '12 March 2026', '2026-3-1', '', '../../2026-03-12'])('refuses the date %o', (date) => {
    const { root, templates } = shop();
    expect(() => newCommission({ root, templates, ...order, date })).toThrow('a day of the calendar');
    expect(readdirSync(root)).toEqual(['worksheets']);
  });

  it('needs templates', () => {
    const { root } = shop();
    for (const templates of [root, join(root, 'gone')]) {
      expect(() => newCommission({ root, templates, ...order })).toThrow('no template sheets');
    }
  });
});

describe('the folder name that a title gives', () => {
  it.each([
    ['Tea chest', 'tea-chest'],
    ['  Émile’s   “Grande” Boîte ', 'emile-s-grande-boite'],
    ['Straße/Größe øre Łódź', 'strasse-grosse-ore-lodz'],
    ['İstanbul ıhlamur', 'istanbul-ihlamur'],
    ['../../etc/passwd', 'etc-passwd'],
    ['C:\\Windows', 'c-windows'],
    ['茶箱', '茶箱'],
    ['चाय की पेटी', 'चाय-की-पेटी'],
    ['box\u0000\n2', 'box-2'],
  ])('%o is %o', (title, expected) => {
    expect(slug(title)).toBe(expected.normalize('NFC'));
  });

  it('needs a letter or a digit', () => {
    for (const title of ['', ' ', '...', '../..', '—']) expect(() => slug(title)).toThrow(ShopError);
  });

  it('is one plain folder name, whatever the title', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 200 }), (title) => {
        fc.pre(/[\p{L}\p{N}]/u.test(title.normalize('NFKD')));
        const name = slug(title);
        expect(name).toMatch(/^[\p{L}\p{M}\p{N}]+(-[\p{L}\p{M}\p{N}]+)*$/u);
        expect(basename(name)).toBe(name);
        expect(Buffer.byteLength(`2026-03-12-${name}`)).toBeLessThan(256);
        expect(slug(name)).toBe(name);
      }),
      { numRuns: 1000 },
    );
  });
});
