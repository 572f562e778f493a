'use strict';
/**
 * Has a kernel start sooner: of the 0.75 s of processor time until it answered, a quarter went into compiling TypeScript's
 * own eight million characters. Loaded by `kernel-output.cjs`, so into every kernel; run by itself, at the build, it keeps what
 * Node compiled of them while two cells were checked. Code that was kept by another Node is passed over.
 */
const { existsSync, readFileSync, writeFileSync } = require('node:fs');
const Module = require('node:module');
const { dirname, join } = require('node:path');
const v8 = require('node:v8');
const vm = require('node:vm');

// A kernel spends most of its short life reading types once. Optimising as for a server takes a quarter of all its processor
// time (V8 11 to 13, measured); work that goes on for longer than that is optimised all the same. V8 12 renamed the flag.
v8.setFlagsFromString(
  Number.parseInt(process.versions.v8, 10) < 12 ? '--interrupt-budget=500000' : '--invocation-count-for-turbofan=30000',
);

// Beside us once built; under test we are the source, and it is in dist/.
const compiled = [__dirname, join(__dirname, '../../../dist')].map((folder) => join(folder, 'typescript.code'));
const typescript = join('@tslab', 'typescript-for-tslab', 'lib', 'typescript.js');
const load = Module._extensions['.js'];
let script;
Module._extensions['.js'] = (module, file) => {
  if (!file.endsWith(typescript)) return load(module, file);
  script = new vm.Script(Module.wrap(readFileSync(file, 'utf8')), {
    filename: file,
    cachedData: kept(),
  });
  const wrapped = script.runInThisContext();
  wrapped.call(module.exports, module.exports, Module.createRequire(file), module, file, dirname(file));
};

if (require.main === module) {
  require('./kernel-converter.cjs');
  const tslab = dirname(require.resolve('tslab/package.json'));
  const converter = require(join(tslab, 'dist', 'converter.js')).createConverter();
  const first = converter.convert(
    '',
    "import { parseLength } from 'kernel-helpers';\nconst length = parseLength('9 1/2 in');",
  );
  const second = converter.convert(
    first.declOutput,
    'const twice = [length].map((each) => ({ each, length }));\ntwice',
  );
  converter.close();
  if (!second.output) throw new Error(`The cells could not be compiled: ${JSON.stringify(second.diagnostics)}`);
  writeFileSync(compiled[0], script.createCachedData());
}

function kept() {
  const there = compiled.find(existsSync);
  return there && readFileSync(there);
}
