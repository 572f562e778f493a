/** A cell of parameters as it should be. */
export const cell = `const parameters = {
  client: 'R. Example',          // who it is for (invented)
  insideLength: '9 1/2 in',      // inside, front to back
  // depth: as it was asked for
  coats: 2,                      // coats of it
  lagging: false,
  planer: { leastLength: '12 in', widest: '12 in' },
  boards: [
    { mark: 'A', thickness: '4/4', price: 14.5, defects: ['knot at 29 in by 5 1/2 in, dead'] },
  ],
  grits: ['P80', 'P100'],
};`;

/** What a maker makes of it by a slip of the pen, and what the kernel says then. */
export const usualSlips: [from: string, to: string, said: string][] = [
  [
    "'9 1/2 in'",
    '9 1/2 in',
    "line 3, insideLength: 9 1/2 in stands without quotation marks; write insideLength: '9 1/2 in'",
  ],
  ["'9 1/2 in'", '240 mm', "line 3, insideLength: 240 mm stands without quotation marks; write insideLength: '240 mm'"],
  ["'9 1/2 in'", '9½"', `line 3, insideLength: 9½" stands without quotation marks; write insideLength: '9½"'`],
  ["'9 1/2 in'", '1 ft 3 in', "write insideLength: '1 ft 3 in'"],
  [
    "thickness: '4/4'",
    'thickness: 4/4 in',
    "line 9, thickness: 4/4 in stands without quotation marks; write thickness: '4/4 in'",
  ],
  [
    "'9 1/2 in', ",
    "'9 1/2 in' ",
    "line 3, insideLength: a comma is missing at its end; write insideLength: '9 1/2 in',",
  ],
  ['coats: 2,', 'coats: 2 ', 'line 5, coats: a comma is missing at its end; write coats: 2,'],
  ["'12 in' },", "'12 in' }", 'line 7, planer: a comma is missing at its end'],
  ["'12 in', widest", "'12 in' widest", "line 7: a comma is missing before widest; write '12 in', widest"],
  ["'P80', 'P100'", "'P80' 'P100'", "line 11: a comma is missing before 'P100'; write 'P80', 'P100'"],
  [
    "'9 1/2 in', ",
    "'9 1/2 in, ",
    "line 3, insideLength: '9 1/2 in has no quotation mark at its end; write insideLength: '9 1/2 in'",
  ],
  ["'9 1/2 in', ", "9 1/2 in', ", "9 1/2 in' has no quotation mark at its beginning; write insideLength: '9 1/2 in'"],
  [
    "'R. Example'",
    'R. Example',
    "line 2, client: R. Example is a text without quotation marks; write client: 'R. Example'",
  ],
  ["'P80', 'P100'", 'P80, P100', "line 11: P80 is a text without quotation marks; write 'P80'"],
  ["'9 1/2 in'", '‘9 1/2 in’', 'stands in quotation marks that are not straight; write insideLength: '],
  ["'9 1/2 in'", "'9 1/2 in’", "not straight; write insideLength: '9 1/2 in'"],
  ["'R. Example'", '“R. Example”', "not straight; write client: 'R. Example'"],
  [
    "'R. Example'",
    "'Dave's chest'",
    `line 2, client: the apostrophe within 'Dave's chest' ends the text too early; write client: "Dave's chest"`,
  ],
  ["'R. Example'", "'The Smiths' chest'", `write client: "The Smiths' chest"`],
  ['coats: 2', 'coats: 9,5', 'line 5, coats: 9,5 has a comma where the point belongs; write coats: 9.5'],
  ['coats: 2', 'coats: 14,400', 'thousands apart; write coats: 14400'],
  ['coats: 2', 'coats: 20 %', 'sign behind its number; write coats: 20, or 0.2 where'],
  ['coats: 2', 'coats: 19 °C', '19 °C is a number with a unit; write coats: 19'],
  ['coats: 2', 'coats: $20', 'write coats: 20'],
  ['coats: 2,', 'coats: 2;', 'no semicolon; write coats: 2,'],
  ['coats: 2,', 'coats: 2,,', 'line 5: one comma too many; write coats: 2,'],
  ['coats: 2', 'coats = 2', 'line 5, coats: behind a name stands a colon; write coats: 2'],
  ['coats: 2', 'coats 2', 'line 5, coats: behind a name stands a colon; write coats: 2'],
  ['coats: 2', 'coats: 2, coats: 3', 'line 5, coats: this name stands there twice'],
  ['coats:', 'coats inside:', 'line 5: a name is one word, and coats inside is not; write coatsInside:'],
  ['false', 'no', 'line 6, lagging: no is neither true nor false; write lagging: false'],
  ['false', 'True', 'write lagging: true'],
  ["'R. Example'", '2027-02-12', "2027-02-12 is a day without quotation marks; write client: '2027-02-12'"],
  ['// who', 'who', 'line 2, client: a note begins with two strokes; write // who it is for'],
  ['// who', '/ who', 'line 2, client: a note begins with two strokes; write // who it is for'],
  [
    "'12 in' },",
    "'12 in',",
    "line 7, planer: the closing } is missing; write planer: { leastLength: '12 in', widest: '12 in' },",
  ],
  ["'P100'],", "'P100',", "line 11, grits: the closing ] is missing; write grits: ['P80', 'P100' ],"],
  ['  ],\n', '', 'line 8, boards: the closing ] is missing; write ], below its lines'],
  ['};', '', 'line 1: the closing } is missing; write }; below the last line'],
];
