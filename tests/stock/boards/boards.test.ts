import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readBoards, type TypedBoard } from '../../../kernel-helpers/src/stock/boards/boards.js';
import { boardsFromCsv } from '../../../kernel-helpers/src/stock/boards/boards-csv.js';
import { coveredArea, readDefect } from '../../../kernel-helpers/src/stock/boards/defects.js';

const plain = { mark: 'A', thickness: '4/4', width: '7 in', length: '8 ft', price: 14.5 };

describe('a measured board', () => {
  it('needs no more than its sizes and price', () => {
    expect(readBoards([plain])).toEqual([{ mark: 'A', thickness: 1, width: 7, length: 96, price: 14.5 }]);
  });

  it('may say how it is bent, how wet it is, and where its knots are', () => {
    const [board] = readBoards([
      {
        ...plain,
        ...{ inHand: true, species: 'walnut-black', moisture: 8.5, bow: '1/4 in', cup: '1/16', twist: '3 mm' },
        ...{ sapwoodLower: '1/2 in', note: 'from the far rack' },
        defects: [
          'knot at 12 in by 3 in size 2 in by 1 1/2 in',
          { kind: 'check', fromEnd: 0, fromEdge: 0, length: '4 in', width: 1 },
        ],
      },
    ]);
    expect(board).toMatchObject({ inHand: true, moisture: 8.5, bow: 0.25, cup: 0.0625, sapwoodLower: 0.5 });
    expect(board?.twist).toBeCloseTo(3 / 25.4, 12);
    expect(board?.defects).toEqual([
      { kind: 'knot', fromEnd: 12, fromEdge: 3, length: 2, width: 1.5 },
      { kind: 'check', fromEnd: 0, fromEdge: 0, length: 4, width: 1 },
    ]);
  });

  it.each<[Partial<TypedBoard>, string]>([
    [
      { defects: ['knot at 95 in by 0 size 2 in by 1 in'] },
      'reaches 97 in (2463.8 mm) from the end and 1 in (25.4 mm) from the edge on board A; possible: inside its 96 in (2438.4 mm) by 7 in (177.8 mm)',
    ],
    [
      { defects: ['a knot somewhere'] },
      '"a knot somewhere" is not a defect; write it like "knot at 12 in by 3 in size',
    ],
    [{ defects: ['knot at here by 3 size 2 by 1'] }, 'fromEnd: "here" given'],
    [
      { sapwoodLower: 4, sapwoodUpper: 3 },
      'sapwood: 7 in (177.8 mm) in all given on board A; possible: less than its 7 in (177.8 mm) of width',
    ],
    [{ moisture: 0.08 }, 'possible: a number from 2 to 60 %'],
    [{ bow: 'a lot' }, 'no. 1, bow: "a lot" given'],
    [{ species: 'walnutt' }, 'walnut'],
    [{ knots: 3 } as never, 'knots'],
  ])('with %j is refused in one line', (field, message) => {
    expect(() => readBoards([{ ...plain, ...field }])).toThrow(message);
    expect(() => readBoards([{ ...plain, ...field }])).toThrow(/^[^\n]*$/);
  });

  it('reads every defect from the words it is chalked in', () => {
    const extents = fc.integer({ min: 1, max: 400 }).map((n) => n / 16);
    const sixteenths = fc.integer({ min: 0, max: 400 }).map((n) => n / 16);
    fc.assert(
      fc.property(
        fc.record({ fromEnd: sixteenths, fromEdge: sixteenths, length: extents, width: extents }),
        fc.constantFrom('knot', 'end check', 'bark pocket'),
        (place, kind) => {
          const { fromEnd, fromEdge, length, width } = place;
          const words = `${kind} at ${fromEnd} in by ${fromEdge} in size ${length} in by ${width} in`;
          expect(readDefect(words)).toEqual({ kind, ...place });
        },
      ),
    );
  });

  it('counts what two defects cover together once, as counting unit squares does', () => {
    const unit = fc.integer({ min: 0, max: 6 });
    const spot = fc.record({ fromEnd: unit, fromEdge: unit, length: unit, width: unit });
    fc.assert(
      fc.property(fc.array(spot, { maxLength: 6 }), (spots) => {
        let squares = 0;
        for (let x = 0; x < 12; x++)
          for (let y = 0; y < 12; y++)
            if (
              spots.some(
                (s) => x >= s.fromEnd && x < s.fromEnd + s.length && y >= s.fromEdge && y < s.fromEdge + s.width,
              )
            )
              squares++;
        expect(coveredArea(spots)).toBe(squares);
      }),
    );
  });
});

describe('boards from a table', () => {
  const csv = [
    'mark;thickness;width (in);length (ft);price;moisture (%);bow (mm);defects;in hand;note',
    'A;4/4;7 1/4;8;14.50;8;6;knot at 12 in by 3 in size 2 in by 1 in | check at 0 by 0 size 3 in by 1 in;no;rack 2',
    'B;25 mm;5.75;4;$14.50;;;;yes;',
  ].join('\n');

  it('are read with the units of their headers', () => {
    const { boards, problems } = boardsFromCsv(csv);
    expect(problems).toEqual([]);
    expect(boards).toMatchObject([
      { mark: 'A', thickness: 1, width: 7.25, length: 96, price: 14.5, moisture: 8, inHand: false, note: 'rack 2' },
      { mark: 'B', width: 5.75, length: 48, price: 14.5, inHand: true },
    ]);
    expect(boards[0]?.defects).toHaveLength(2);
    expect(boards[0]?.bow).toBeCloseTo(6 / 25.4, 12);
    expect(boards[1]?.thickness).toBeCloseTo(25 / 25.4, 12);
    expect(boards[1]).not.toHaveProperty('moisture');
  });

  it.each([
    ['mark,thickness,width (in),lenght (in),price', 'column "lenght (in)" is not known; the nearest is length'],
    ['mark,thickness,width (in),price', 'no column for length in the header'],
    ['mark,thickness,width (yd),length (in),price', '"yd" is not a unit of length here; possible: in, ft, mm, cm, m'],
    ['mark,board,thickness,width (in),length (in),price', 'two columns hold the mark'],
    ['mark,thickness,width (in),length (in),price,moisture (g)', 'moisture is read in %'],
  ])('under the header %s are not read at all', (header, message) => {
    const { boards, problems } = boardsFromCsv(`${header}\nA,4/4,7,96,14.5,8\n`);
    expect(boards).toEqual([]);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatchObject({ line: 1 });
    expect(problems[0]?.what).toContain(message);
    expect(problems[0]?.what).toContain('nothing was read');
  });

  it.each([
    ['A,4/4,7,96 in,dear', 'price: "dear" given; possible: a number such as 14.5'],
    ['A,4/4,7 lb,96 in,14', '"7 lb"'],
    ['A,4/4,7,96,14', 'length: "96" has no unit; write it into the header, such as length (in)'],
    ['OK,4/4,7,96 in,14', 'mark: "OK" stands on two boards'],
    ['A,4/4,7,96 in', '4 of 6 fields'],
    [
      'A,4/4,7,96 in,14,knot at 95 in by 1 in size 3 in by 1 in',
      'possible: inside its 96 in (2438.4 mm) by 7 in (177.8 mm)',
    ],
    ['A,4/4,7,96 in,14,a big knot', '"a big knot" is not a defect'],
  ])('row %s is left out and named with its line, the others are kept', (row, message) => {
    const padded = row.split(',').length === 5 ? `${row},` : row;
    const { boards, problems } = boardsFromCsv(
      `mark,thickness,width (in),length,price,defects\nOK,4/4,7,96 in,14,\n${padded}\nlast,4/4,7,96 in,14,\n`,
    );
    expect(boards.map(({ mark }) => mark)).toEqual(['OK', 'last']);
    expect(problems).toHaveLength(1);
    expect(problems[0]?.line).toBe(3);
    expect(problems[0]?.what).toContain(message);
    expect(problems[0]?.what).toContain('the board is left out');
  });

  it('says that an empty file is empty', () => {
    expect(boardsFromCsv('').problems[0]?.what).toContain('the file is empty');
    expect(() => boardsFromCsv(undefined as never)).toThrow("the file's text is needed");
  });
});
