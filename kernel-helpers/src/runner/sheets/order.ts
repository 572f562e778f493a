import { ShopError } from '../../measure/shop-error.js';
import type { SheetLinks } from '../../record/sheets.js';

/**
 * The sheets in the order they have to be run: each after those that decide what it needs or uses, and by name where that
 * leaves a choice.
 *
 * @param recorded  decisions that the record holds already
 * @throws ShopError  when a sheet needs what no sheet decides and the record lacks, or when sheets wait for each other
 */
export function sheetOrder(sheets: readonly SheetLinks[], recorded: ReadonlySet<string>): SheetLinks[] {
  const byName = [...sheets].sort((a, b) => (a.file < b.file ? -1 : 1));
  const deciders = (sheet: SheetLinks, what: string) =>
    byName.filter((other) => other !== sheet && other.decides.includes(what));

  for (const sheet of byName) {
    const missing = sheet.needs.find((what) => !recorded.has(what) && deciders(sheet, what).length === 0);
    if (missing !== undefined) {
      throw new ShopError(
        `${sheet.file} needs ${missing}, which no sheet here decides and the record does not hold: add the sheet that decides ${missing}.`,
      );
    }
  }

  const before = (sheet: SheetLinks) => [...sheet.needs, ...sheet.finds].flatMap((what) => deciders(sheet, what));
  const ordered: SheetLinks[] = [];
  while (ordered.length < byName.length) {
    const waiting = byName.filter((sheet) => !ordered.includes(sheet));
    const next = waiting.find((sheet) => before(sheet).every((other) => ordered.includes(other)));
    if (!next) throw new ShopError(circle(waiting));
    ordered.push(next);
  }
  return ordered;
}

/** The sheets that wait for each other, as one sentence. */
function circle(waiting: readonly SheetLinks[]): string {
  const link = (sheet: SheetLinks) => {
    for (const what of [...sheet.needs, ...sheet.finds]) {
      const other = waiting.find((each) => each !== sheet && each.decides.includes(what));
      if (other) return { what, other };
    }
  };
  const path: SheetLinks[] = [];
  let sheet = waiting[0];
  while (sheet && !path.includes(sheet)) {
    path.push(sheet);
    sheet = link(sheet)?.other;
  }
  const ring = path.slice(sheet ? path.indexOf(sheet) : 0);
  const steps = ring.map((each) => `${each.file} needs ${link(each)?.what}, decided in ${link(each)?.other.file}`);
  return `the sheets wait for each other: ${steps.join('; ')}.`;
}
