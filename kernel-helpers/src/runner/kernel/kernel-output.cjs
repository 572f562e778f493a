'use strict';
/**
 * Loaded into every kernel before tslab (`node --require`), by the runner and by Jupyter alike, so that no output is lost.
 * tslab publishes without waiting. Left as it is, the socket takes some 500 messages in one go and refuses the rest, the
 * word that the cell is done among them: a cell that printed a thousand lines would never end. Without a timeout it takes
 * each at once, and without a limit none is dropped while the reader is slow.
 */
const { isMainThread } = require('node:worker_threads');

if (isMainThread && process.argv[2] === 'kernel') {
  const zeromq = require(require.resolve('zeromq', { paths: [process.argv[1]] }));
  zeromq.Publisher = class extends zeromq.Publisher {
    constructor() {
      super({ sendTimeout: 0, sendHighWaterMark: 0 });
    }
  };
}
