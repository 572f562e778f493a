'use strict';
/**
 * Mends tslab's converter, which checks and compiles each cell, as it is loaded. Loaded by `kernel-output.cjs`, so into every
 * kernel. Another tslab than the one that these words are of is left as it is.
 *
 * What went wrong:
 * - A name of an earlier cell is written as `exports.name`, but was lost in `{ name }`, and the property in
 *   `const { name: other } = thing` was taken for one.
 * - A folder that came or went beside a sheet, or in node_modules, while it was open broke its next cell ("Unexpected pending
 *   rebuildTimer"): folders are not watched. Files are, so that a changed module of one's own is read anew.
 *
 * What took time (of a sheet of seventeen cells, a third of the processor's):
 * - The standard library's sixty files were each looked for under another name in all folders above the sheet, once at the
 *   start and again at the first import: they are read as one.
 * - Every @types package of those folders was read, used or not: only Node's is, and what a cell imports.
 * - The helpers' declarations were read with all that explains them, where nobody can ask for it: not by the runner.
 * - Each cell was checked as it stands to learn its names, then again with them exported: the names come from the text.
 */
const { readFileSync } = require('node:fs');
const Module = require('node:module');
const { join } = require('node:path');

// Only the runner's kernels have a guard.
const unasked = process.execArgv.some((flag) => flag.endsWith('kernel-guard.cjs'));

const MENDS = [
  [
    'function wrapPrevIdentifier(node) {',
    `function wrapPrevIdentifier(node) {
      const parsed = ts.getParseTreeNode(node) || node;
      if (parsed.parent && ts.isBindingElement(parsed.parent) && parsed.parent.propertyName === parsed) return node;
      if (ts.isShorthandPropertyAssignment(parsed) && !parsed.objectAssignmentInitializer) {
        const declared = checker.getShorthandAssignmentValueSymbol(parsed)?.declarations ?? [];
        if (!declared.some((each) => each.getSourceFile() === declsFile)) return node;
        const { factory } = ts;
        const value = factory.createPropertyAccessExpression(factory.createIdentifier('exports'), parsed.name);
        return factory.createPropertyAssignment(parsed.name, value);
      }`,
  ],
  [
    'let rebuildTimer = null;',
    `let rebuildTimer = null;
    sys.watchDirectory = () => ({ close() {} });`,
  ],
  ['typeRoots: getTypeRoots(),', "typeRoots: getTypeRoots(), types: ['node'],"],
  [
    'if (path === srcFilename) {',
    `if (path.endsWith('.d.ts') && ts.getDirectoryPath(path) === libFolder) return libraryText(path);
        if (${unasked} && path.endsWith('kernel-helpers/dist/index.d.ts'))
          return ts.sys.readFile(path)?.replace(/\\/\\*\\*.*?\\*\\//gs, '');
        if (path === srcFilename) {`,
  ],
  [
    'const rootFiles = new Set(',
    `const libFolder = ts.getDirectoryPath(ts.sys.getExecutingFilePath());
    // The first that is asked for holds the text of all that it names, however often it is read; those are empty then.
    const libTexts = new Map();
    function libraryText(path, named = false) {
      if (libTexts.has(path)) return libTexts.get(path);
      libTexts.set(path, '');
      const text = ts.sys.readFile(path)?.replace(/^\\/\\/\\/ *<reference lib="(.*)" *\\/>.*$/gm, (_, name) =>
        libraryText(ts.combinePaths(libFolder, 'lib.' + name + '.d.ts'), true)).replace(/\\/\\*\\*.*?\\*\\//gs, '');
      if (!named) libTexts.set(path, text);
      return text;
    }
    const rootFiles = new Set(`,
  ],
  [
    `function convert(prevDecl, src) {
        updateContent(prevDecl, src);
        let declsFile = builder.getSourceFile(declFilename);
        let srcFile = builder.getSourceFile(srcFilename);
        const locals = srcFile.locals;`,
    `function convert(prevDecl, src) {
        const parsed = ts.createSourceFile(srcFilename, srcPrefix + src, transpileTarget);
        ts.bindSourceFile(parsed, builder.getProgram().getCompilerOptions());
        const locals = parsed.locals;
        let declsFile, srcFile;`,
  ],
  [
    `if (keys.size > 0) {
            // Export all local variables.
            // TODO: Disallow "export" in the input.
            const suffix = `,
    `{
            const suffix = keys.size === 0 ? '' : `,
  ],
];

const converter = join('tslab', 'dist', 'converter.js');
const load = Module._extensions['.js'];
Module._extensions['.js'] = (module, file) => {
  if (!file.endsWith(converter)) return load(module, file);
  const text = readFileSync(file, 'utf8');
  const known = MENDS.every(([from]) => text.includes(from));
  module._compile(known ? MENDS.reduce((mended, [from, to]) => mended.replace(from, () => to), text) : text, file);
};
