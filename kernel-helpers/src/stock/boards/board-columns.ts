import { closest } from 'fastest-levenshtein';
import type { LineProblem, TableRow } from '../../measure/csv-table.js';
import type { Board } from './boards.js';

/** A column of a table of boards: the field it holds, and the unit its header gives; no field for one that is passed over. */
export interface BoardColumn {
  head: string;
  field?: keyof Board;
  unit?: 'in' | 'ft' | 'mm' | 'cm' | 'm';
}

/** How a header may name each field, without its unit. */
const names: Record<keyof Board, string[]> = {
  mark: ['mark', 'board', 'board mark'],
  thickness: ['thickness', 'thick'],
  width: ['width', 'wide'],
  length: ['length', 'long'],
  price: ['price', 'price per board foot', 'price of a board foot', 'price per bd ft'],
  inHand: ['in hand', 'in the shop'],
  plywood: ['plywood'],
  species: ['species', 'wood'],
  moisture: ['moisture', 'moisture content', 'mc'],
  bow: ['bow'],
  cup: ['cup'],
  twist: ['twist', 'wind'],
  defects: ['defects', 'defect', 'knots'],
  sapwoodLower: ['sapwood lower', 'sapwood lower edge'],
  sapwoodUpper: ['sapwood upper', 'sapwood upper edge'],
  note: ['note', 'notes', 'remark', 'remarks'],
};
const needed = ['mark', 'thickness', 'width', 'length', 'price'] as const;
const unitless = ['mark', 'price', 'inHand', 'plywood', 'species', 'moisture', 'defects', 'note'];
const units: Record<string, BoardColumn['unit']> = {
  in: 'in',
  inch: 'in',
  inches: 'in',
  '"': 'in',
  ft: 'ft',
  foot: 'ft',
  feet: 'ft',
  "'": 'ft',
  mm: 'mm',
  cm: 'cm',
  m: 'm',
};

/** Reads the header of a table of boards: fields and units. @internal */
export function readBoardHeader({ line, fields }: TableRow): BoardColumn[] | LineProblem {
  const problem = (what: string): LineProblem => ({ line, what: `${what}; nothing was read` });
  const columns: BoardColumn[] = [];
  for (const head of fields) {
    const { name, written } = parted(head);
    const field = (Object.keys(names) as (keyof Board)[]).find((key) => names[key].includes(name));
    if (field === undefined) {
      const known = Object.values(names).flat();
      return problem(
        `column "${head}" is not known; the nearest is ${closest(name, known)} (possible: ${Object.values(names)
          .map(([first]) => first)
          .join(', ')})`,
      );
    }
    if (columns.some((column) => column.field === field)) return problem(`two columns hold the ${names[field][0]}`);
    const unit = written === undefined ? undefined : units[written];
    if (written !== undefined && !unitless.includes(field) && unit === undefined)
      return problem(`column "${head}": "${written}" is not a unit of length here; possible: in, ft, mm, cm, m`);
    if (field === 'moisture' && written !== undefined && !/^(%|percent)$/.test(written))
      return problem(`column "${head}": moisture is read in %, as the meter shows it`);
    columns.push({ head, field, ...(unit && !unitless.includes(field) ? { unit } : {}) });
  }
  const missing = needed.filter((field) => !columns.some((column) => column.field === field));
  if (missing.length > 0)
    return problem(
      `no column for ${missing.join(', ')} in the header (it has ${fields.map((f) => `"${f}"`).join(', ')})`,
    );
  return columns;
}

/** A header's name and the unit in brackets or after a comma: `width (in)`, `bow, mm`. */
function parted(head: string): { name: string; written?: string } {
  const match = /^(.*?)\s*(?:[([]\s*(.+?)\s*[)\]]|,\s*(.+?))?\s*$/.exec(head.toLowerCase().trim());
  const written = match?.[2] ?? match?.[3];
  const name = (match?.[1] ?? '').replace(/[_\s]+/g, ' ').trim();
  return written === undefined ? { name } : { name, written };
}
