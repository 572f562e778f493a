import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { basename, dirname, join, relative, sep } from 'node:path';
import { diskError } from '../disk/disk-error.js';
import { dayNumber, isoDay } from '../measure/day.js';
import { ShopError } from '../measure/shop-error.js';
import { type BegunWith, begunParameters, withoutInvented } from './begun/begun-with.js';
import { type BegunValue, withParameters } from './begun/parameters-cell.js';
import { cardName, cardText, keptCard } from './shop-card/card-file.js';
import { usualShop } from './shop-card/shop-card.js';
import { templateSheets } from './template-sheets.js';

/** A commission's folder, just made. */
export interface NewCommission {
  /** `2026-03-12-tea-chest` */
  name: string;
  folder: string;
  /** The sheets in it, by name. */
  sheets: string[];
}

/**
 * Makes the folder of a new commission, `data/commissions/<date>-<title>/`, with a copy of every template sheet of its piece and
 * of the shop card.
 * It appears whole or not at all, and an existing one is never touched.
 *
 * @param root  the daybook's own folder
 * @param title  what is being made, "Tea chest"
 * @param date  first day, `2026-03-12`
 * @param templates  the folder of template sheets of a box; those of other pieces lie in `pieces/` beside it
 * @param piece  what it is, a box unless told otherwise; see {@link templateSheets}
 * @param facts  what is known of a commission of one's own: its sheets begin with it, and with nothing of the demonstration; left
 *   out, they begin as the templates, with the demonstration's figures
 * @throws ShopError  when title or date will not do, the folder is there already, or there are no templates
 */
export function newCommission({
  root,
  title,
  date,
  templates,
  piece = 'box',
  facts,
}: {
  root: string;
  title: string;
  date: string;
  templates: string;
  piece?: string;
  facts?: BegunWith;
}): NewCommission {
  const name = `${checkedDate(date)}-${slug(title)}`;
  const commissions = join(root, 'data', 'commissions');
  const folder = join(commissions, name);
  const paths = templateSheets(templates, piece);
  const sheets = paths.map((path) => basename(path));
  if (sheets.length === 0) throw new ShopError(`There are no template sheets in ${templates}.`);
  if (existsSync(folder)) throw alreadyThere(folder);

  const begun = facts && begunParameters(facts, { title, date });
  const sheetOf = (path: string) => {
    const sheet = sheetFor(folder, path, date);
    return begun ? ownSheet(sheet, begun) : sheet;
  };
  const card = keptCard(join(root, 'data', cardName)) ?? usualShop();

  let next: string | undefined;
  try {
    mkdirSync(commissions, { recursive: true });
    next = join(commissions, `.new-${process.pid}`);
    mkdirSync(next);
    writeFileSync(join(next, cardName), cardText(card));
    for (const path of paths) writeFileSync(join(next, basename(path)), sheetOf(path));
    renameSync(next, folder);
  } catch (error) {
    if (next) rmSync(next, { recursive: true, force: true });
    throw existsSync(folder) ? alreadyThere(folder) : diskError(error, `${folder} cannot be made`);
  }
  return { name, folder, sheets };
}

/** Day for which the templates' own days were written: as many weeks later as a commission is begun, they lie later too. */
const templateDay = '2026-11-25';

/** Days that a template comes with and that must not lie before the commission; weeks later they keep their day of the week. */
const templateDays = /\b((?:promised|date|today|start): ')(\d{4}-\d\d-\d\d)(?=',)/g;

/**
 * A template's text, its links to sheets in other folders, such as the glossary, leading there from the commission's folder, and
 * its days as long after the beginning as they were written.
 */
function sheetFor(folder: string, path: string, begun: string): string {
  const weeks = Math.max(0, Math.floor((dayNumber(begun) - dayNumber(templateDay)) / 7));
  const moved = (target: string) => relative(folder, join(dirname(path), target)).replaceAll(sep, '/');
  return readFileSync(path, 'utf8')
    .replace(/\]\((\.\.\/[^)#\s]+)/g, (_, target: string) => `](${encodeURI(moved(decodeURI(target)))}`)
    .replace(templateDays, (_, field: string, day: string) => field + isoDay(dayNumber(day) + 7 * weeks));
}

/** A sheet with the parameters that a commission of one's own begins with, and without what is said of the demonstration. */
function ownSheet(sheet: string, begun: Record<string, BegunValue>): string {
  const notebook: { cells: { cell_type: string; metadata: { tags?: string[] }; source: string | string[] }[] } =
    JSON.parse(sheet);
  for (const cell of notebook.cells) {
    const source = withoutInvented([cell.source].flat().join(''));
    const isParameters = cell.metadata.tags?.includes('parameters');
    cell.source = (isParameters ? withParameters(source, begun) : source).split(/(?<=\n)/);
  }
  return `${JSON.stringify(notebook, null, 1)}\n`;
}

/**
 * A title as part of a folder's name: lower case, accents folded, everything but letters and digits to single dashes.
 *
 * @throws ShopError  when nothing is left of it
 */
export function slug(title: string): string {
  const plain = title
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase();
  const spelt = plain.replace(/[ßæœøłđðþı]/g, (letter) => spellings[letter] ?? letter).normalize('NFC');
  const words = spelt.replace(/[^\p{L}\p{M}\p{N}]+/gu, '-').replace(/^-+|-+$/g, '');
  const short = [...words].slice(0, longest).join('').replace(/-+$/, '');
  if (short === '') {
    throw new ShopError(`The title is '${title}'; it needs at least one letter or digit, such as "Tea chest".`);
  }
  return short;
}

const longest = 60;

// Letters that are no accented form of another, in the usual spelling without them.
const spellings: Record<string, string> = {
  ß: 'ss',
  æ: 'ae',
  œ: 'oe',
  ø: 'o',
  ł: 'l',
  đ: 'd',
  ð: 'd',
  þ: 'th',
  ı: 'i',
};

function checkedDate(date: string): string {
  const day = new Date(`${date}T00:00:00Z`);
  if (/^\d{4}-\d\d-\d\d$/.test(date) && !Number.isNaN(day.getTime()) && day.toISOString().startsWith(date)) return date;
  throw new ShopError(`The date is '${date}'; it must be a day of the calendar as year-month-day, such as 2026-03-12.`);
}

function alreadyThere(folder: string): ShopError {
  return new ShopError(`${folder} is there already and stays as it is; give the new commission another title.`);
}
