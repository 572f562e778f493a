'use strict';
/**
 * Has a kernel say the usual slips of the pen in one line of plain words, instead of what the compiler makes of them: a fraction
 * without quotation marks is six complaints about commas, colons and operators. Loaded by `kernel-output.cjs`, so into every
 * kernel. What is no usual slip is printed as tslab prints it; another tslab than the one that these words are of is left as it
 * is.
 */
const { existsSync, readFileSync } = require('node:fs');
const Module = require('node:module');
const { join } = require('node:path');
const { inspect } = require('node:util');

const MENDS = [
  [
    'printDiagnostics(converted.diagnostics);',
    '__slips__.complain(src, converted.diagnostics, printDiagnostics, console);',
  ],
  ['if (!converted.output) {', '__slips__.ran(src);\n        if (!converted.output) {'],
];
const PARAMETERS = /^\s*(?:const|let)\s+parameters\s*=/m;

// Beside us once built; under test we are the source, and it is in dist/.
const slips = () =>
  require([__dirname, join(__dirname, '../../../dist')].map((folder) => join(folder, 'slips.cjs')).find(existsSync));
let parameters = '';
const __slips__ = {
  /** Remembers the cell of parameters that the later ones rest on. */
  ran(cell) {
    if (PARAMETERS.test(cell)) parameters = cell;
  },
  complain(cell, complaints, print, console) {
    const said = slips().slipIn(cell, complaints, parameters);
    if (said === undefined) return print(complaints);
    // As an error of ours, which says all by itself.
    const error = { name: 'ShopError', inSheet: () => said, [inspect.custom]: () => said };
    console.error(Object.assign(new Error(said), error));
  },
};

const executor = join('tslab', 'dist', 'executor.js');
const load = Module._extensions['.js'];
Module._extensions['.js'] = (module, file) => {
  if (!file.endsWith(executor)) return load(module, file);
  const text = readFileSync(file, 'utf8');
  if (!MENDS.every(([from]) => text.includes(from))) return load(module, file);
  globalThis.__slips__ = __slips__;
  module._compile(
    MENDS.reduce((mended, [from, to]) => mended.replace(from, () => to), text),
    file,
  );
};
