import { type LineProblem, tableRows } from '../../measure/csv-table.js';
import { ShopError } from '../../measure/shop-error.js';
import { type BoardColumn, readBoardHeader } from './board-columns.js';
import { type Board, boardProblem, readBoard } from './boards.js';
import { readDefects } from './defects.js';

/**
 * Boards from a table of text (CSV), such as a spreadsheet saves or a yard sends.
 *
 * The first line names the columns, in any order: mark, thickness, width, length, price; and where they were measured
 * moisture, bow, cup, twist, defects, sapwood lower, sapwood upper, in hand, species, note. A length has its unit in the
 * header (`width (in)`, `length (ft)`, `bow (mm)`) or behind each value (`7 1/4 in`); thickness also as the yard calls it,
 * `4/4`. Several defects in one cell are parted by `|`. Comma, semicolon or tab between the fields. A row that cannot be
 * read is reported with its line and left out; nothing is guessed.
 *
 * @param csvText  the file's text
 * @returns boards in the order of the file; problems in order of line
 * @throws ShopError  when what is given is not text
 */
export function boardsFromCsv(csvText: string): { boards: Board[]; problems: LineProblem[] } {
  if (typeof csvText !== 'string')
    throw new ShopError("csvText: the file's text is needed, such as readFileSync('boards.csv', 'utf8') gives");
  const table = tableRows(csvText);
  if ('what' in table) return { boards: [], problems: [table] };
  const columns = readBoardHeader(table.header);
  if ('what' in columns) return { boards: [], problems: [columns] };

  const boards: Board[] = [];
  const problems: LineProblem[] = [];
  for (const { line, fields } of table.rows) {
    try {
      if (fields.length !== columns.length)
        throw new ShopError(
          `${fields.length} of ${columns.length} fields (a comma inside a field needs quotes around it)`,
        );
      const board = readBoard(typedBoard(columns, fields));
      const wrong = boardProblem([...boards, board]);
      if (wrong) throw new ShopError(wrong.what);
      boards.push(board);
    } catch (error) {
      if (!(error instanceof ShopError)) throw error;
      problems.push({ line, what: `${error.message}; the board is left out` });
    }
  }
  return { boards, problems };
}

function typedBoard(columns: readonly BoardColumn[], fields: readonly string[]): Record<string, unknown> {
  const typed = columns.flatMap(({ field, unit, head }, index): [string, unknown][] => {
    const text = (fields[index] as string).trim();
    if (field === undefined || text === '') return [];
    if (field === 'defects') return [[field, readDefects(text)]];
    if (field === 'inHand' || field === 'plywood') return [[field, yesOrNo(text, head)]];
    if (field === 'price' || field === 'moisture') return [[field, plainNumber(text, head)]];
    if (field === 'mark' || field === 'species' || field === 'note') return [[field, text]];
    if (/[a-z"'″′]$/i.test(text) || /^\d+\/4$/.test(text)) return [[field, text]];
    if (unit === undefined)
      throw new ShopError(
        `${head}: "${text}" has no unit; write it into the header, such as ${field} (in), or behind the value`,
      );
    return [[field, `${text} ${unit}`]];
  });
  return Object.fromEntries(typed);
}

function plainNumber(text: string, head: string): number {
  const match = /^[^\d.-]{0,3}\s*(-?(?:\d+\.?\d*|\.\d+))\s*%?$/.exec(text);
  if (!match) throw new ShopError(`${head}: "${text}" given; possible: a number such as 14.5`);
  return Number(match[1]);
}

function yesOrNo(text: string, head: string): boolean {
  if (/^(yes|y|true|x|1)$/i.test(text)) return true;
  if (/^(no|n|false|0)$/i.test(text)) return false;
  throw new ShopError(`${head}: "${text}" given; possible: yes or no`);
}
