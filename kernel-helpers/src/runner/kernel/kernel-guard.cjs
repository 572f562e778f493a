'use strict';
/**
 * Loaded into every kernel that the runner starts, before tslab (`node --require`). A sheet sees nothing of it:
 * - ends the kernel when the runner is gone, however it went, since tslab does not watch its parent;
 * - tells the runner when tslab is about to take its ports, and waits until they are free;
 * - tells the runner which line of a cell failed, where the error does not say all by itself as ours do;
 * - loads kernel-helpers ahead of the first cell.
 * It speaks through the real standard streams, which tslab does not use: events on 2, the runner's answer on 0.
 */
const { writeSync } = require('node:fs');
const { Socket } = require('node:net');
const vm = require('node:vm');
const { isMainThread, Worker, workerData } = require('node:worker_threads');

const MARK = '\u0001kernel-guard ';

// A process that a sheet forks inherits this file, and is none of its business.
if (isMainThread && process.argv[2] === 'kernel') guard();
else if (workerData?.kernelGuard) watch(workerData.kernelGuard);

function guard() {
  const portsFree = new Int32Array(new SharedArrayBuffer(4));
  new Worker(__filename, { workerData: { kernelGuard: portsFree }, execArgv: [] }).unref();

  // tslab sets this listener just before it reads the connection file and binds.
  process.on('newListener', function beforePorts(event) {
    if (event !== 'unhandledRejection') return;
    process.off('newListener', beforePorts);
    tell({ event: 'ports' });
    Atomics.wait(portsFree, 0, 0, 5000);
    setImmediate(loadHelpers);
  });

  let emitted = [];
  const run = vm.runInThisContext;
  vm.runInThisContext = (code, options) => {
    emitted = String(code).split('\n');
    return run(code, options);
  };
  const print = console.error;
  console.error = (...items) => {
    const [error] = items;
    const plain = error?.name === 'ShopError';
    const line = error instanceof Error && !plain ? failedLine(error, emitted) : undefined;
    if (line || plain) tell({ event: 'failed', line, plain });
    print(...items);
  };
}

function loadHelpers() {
  try {
    require('kernel-helpers');
  } catch {
    // The sheet's own import will say what is wrong.
  }
}

/** In its own thread, so that it acts while a cell is busy: any data frees the ports, the end of the stream ends the kernel. */
function watch(portsFree) {
  const end = () => {
    try {
      process.kill(process.platform === 'win32' ? process.pid : -process.pid, 'SIGKILL');
    } catch {
      process.kill(process.pid, 'SIGKILL');
    }
  };
  new Socket({ fd: 0, readable: true, writable: false })
    .on('data', () => {
      Atomics.store(portsFree, 0, 1);
      Atomics.notify(portsFree, 0);
    })
    .on('error', end)
    .on('close', end);
}

/** The statement of the cell, as compiled, that the error passed through; the last line is the wrapper's own. */
function failedLine(error, emitted) {
  const lines = [...String(error.stack).matchAll(/evalmachine\.<anonymous>:(\d+):/g)].map((match) => Number(match[1]));
  const line = lines.findLast((number) => number < emitted.length);
  return line && emitted[line - 1].replace(/^\((async )?function\(exports, require\) \{ /, '').trim();
}

function tell(event) {
  writeSync(2, `${MARK}${JSON.stringify(event)}\n`);
}
