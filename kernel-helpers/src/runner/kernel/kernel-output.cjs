'use strict';
/**
 * Loaded into every kernel before tslab (`node --require`), by the runner and by Jupyter alike, so that no output is lost
 * and no error drowns in code that nobody reads.
 * tslab publishes without waiting. Left as it is, the socket takes some 500 messages in one go and refuses the rest, the
 * word that the cell is done among them: a cell that printed a thousand lines would never end. Without a timeout it takes
 * each at once, and without a limit none is dropped while the reader is slow.
 * Node puts the source line of an error's first frame ahead of its stack. The helpers are one bundle, whose lines are as
 * long as a book: the stack alone is printed, and of a line no more than can be read.
 * tslab writes a name of an earlier cell as `exports.name`, but loses it in `{ name }`, and takes the property in
 * `const { name: other } = thing` for one. Both are mended as its converter is loaded; another tslab is left as it is.
 */
const { readFileSync } = require('node:fs');
const Module = require('node:module');
const { join } = require('node:path');
const { format } = require('node:util');
const vm = require('node:vm');
const { isMainThread } = require('node:worker_threads');

const LONG_LINE = /^(.{300}).+$/gm;
const REWRITES_NAMES = 'function wrapPrevIdentifier(node) {';
const MENDED = `${REWRITES_NAMES}
  const parsed = ts.getParseTreeNode(node) || node;
  if (parsed.parent && ts.isBindingElement(parsed.parent) && parsed.parent.propertyName === parsed) return node;
  if (ts.isShorthandPropertyAssignment(parsed) && !parsed.objectAssignmentInitializer) {
    const declared = checker.getShorthandAssignmentValueSymbol(parsed)?.declarations ?? [];
    if (!declared.some((each) => each.getSourceFile() === declsFile)) return node;
    const { factory } = ts;
    const value = factory.createPropertyAccessExpression(factory.createIdentifier('exports'), parsed.name);
    return factory.createPropertyAssignment(parsed.name, value);
  }`;

if (isMainThread && process.argv[2] === 'kernel') {
  const zeromq = require(require.resolve('zeromq', { paths: [process.argv[1]] }));
  zeromq.Publisher = class extends zeromq.Publisher {
    constructor() {
      super({ sendTimeout: 0, sendHighWaterMark: 0 });
    }
  };
  const converter = join('tslab', 'dist', 'converter.js');
  const load = Module._extensions['.js'];
  Module._extensions['.js'] = (module, file) => {
    if (!file.endsWith(converter)) return load(module, file);
    return module._compile(
      readFileSync(file, 'utf8').replace(REWRITES_NAMES, () => MENDED),
      file,
    );
  };
  const run = vm.runInThisContext;
  vm.runInThisContext = (code, options) => run(code, { ...options, displayErrors: false });
  const print = console.error;
  console.error = (...items) => {
    if (!items.some((item) => item instanceof Error)) print(...items);
    else print('%s', format(...items).replace(LONG_LINE, '$1 ...'));
  };
}
