import { CsvError, parse } from 'csv-parse/sync';

/** Something in a table that its maker should look at. */
export interface LineProblem {
  /** Line of the file, the first is 1. */
  line: number;
  /** What is wrong, and what was done about it. */
  what: string;
}

/** One line of a table, cut into fields. */
export interface TableRow {
  line: number;
  fields: string[];
}

/** A table of text cut into fields; `rows` are those under the header. */
export interface Table {
  separator: string;
  header: TableRow;
  rows: TableRow[];
}

const separators = [',', ';', '\t'];

/** Cuts a table into lines and fields: any line ends, quoted fields, a byte-order mark; empty lines are passed over. @internal */
export function tableRows(csvText: string): Table | LineProblem {
  if (csvText.includes('\0'))
    return { line: 1, what: 'the file is not plain text in UTF-8; save it again as CSV (UTF-8). Nothing was read' };
  const text = csvText.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n');
  const lines = text.split('\n');
  const first = lines.findIndex((line) => line.trim() !== '');
  if (first < 0) return { line: 1, what: 'the file is empty' };
  const count = (separator: string) => (lines[first] as string).split(separator).length - 1;
  const separator = separators.reduce((best, other) => (count(other) > count(best) ? other : best));
  const [header, ...rows] = cut(text, separator);
  if (!header || count(separator) === 0)
    return {
      line: first + 1,
      what: `the header "${lines[first]}" has no comma, semicolon or tab between its columns; nothing was read`,
    };
  if (rows.length === 0) return { line: first + 1, what: 'there is no row under the header' };
  return { separator, header, rows };
}

function cut(text: string, delimiter: string): TableRow[] {
  const options = { delimiter, info: true, relax_column_count: true, relax_quotes: true, trim: true } as const;
  let records: { info: { lines: number }; record: string[] }[];
  try {
    records = parse(text, { ...options, record_delimiter: '\n' }) as never;
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    // A quote that is opened and never closed: quotes are then read as they stand, and the row that has one is reported.
    records = parse(text, { ...options, record_delimiter: '\n', quote: null }) as never;
  }
  return records
    .map(({ info, record }) => ({ line: info.lines, fields: record }))
    .filter(({ fields }) => fields.some((field) => field !== ''));
}
