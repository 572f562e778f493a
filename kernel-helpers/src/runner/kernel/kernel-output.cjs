'use strict';
/**
 * Loaded into every kernel before tslab (`node --require`), by the runner and by Jupyter alike, so that no output is lost
 * and no error drowns in code that nobody reads.
 * tslab publishes without waiting. Left as it is, the socket takes some 500 messages in one go and refuses the rest, the
 * word that the cell is done among them: a cell that printed a thousand lines would never end. Without a timeout it takes
 * each at once, and without a limit none is dropped while the reader is slow.
 * Node puts the source line of an error's first frame ahead of its stack. The helpers are one bundle, whose lines are as
 * long as a book: the stack alone is printed, and of a line no more than can be read.
 * An error of ours names what it refuses as the sheet's own parameters do, whatever the helper that refused it calls it.
 */
const { format } = require('node:util');
const vm = require('node:vm');
const { isMainThread } = require('node:worker_threads');

const LONG_LINE = /^(.{300}).+$/gm;

if (isMainThread && process.argv[2] === 'kernel') {
  const zeromq = require(require.resolve('zeromq', { paths: [process.argv[1]] }));
  zeromq.Publisher = class extends zeromq.Publisher {
    constructor() {
      super({ sendTimeout: 0, sendHighWaterMark: 0 });
    }
  };
  require('./kernel-typescript.cjs');
  require('./kernel-converter.cjs');
  require('./kernel-slips.cjs');
  const run = vm.runInThisContext;
  vm.runInThisContext = (code, options) => run(code, { ...options, displayErrors: false });
  const print = console.error;
  console.error = (...items) => {
    if (!items.some((item) => item instanceof Error)) print(...items);
    else print('%s', format(...items.map(inSheet)).replace(LONG_LINE, '$1 ...'));
  };
}

function inSheet(item) {
  const parameters = globalThis.__tslab__?.exports.parameters;
  return item?.name === 'ShopError' && parameters instanceof Object ? item.inSheet(parameters) : item;
}
