import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { expect, test } from 'vitest';

const source = join(import.meta.dirname, '..', '..', 'kernel-helpers', 'src');

// A file may import from folders earlier in this list, or from its own.
const pure = ['measure', 'wood', 'fit', 'piece', 'joints', 'stock', 'surface', 'money', 'time'];
const folders = [...pure, 'disk', 'record', 'shop', 'lesson', 'show', 'runner'];

const files = readdirSync(source, { recursive: true, encoding: 'utf8' })
  .filter((name) => /\.(ts|cjs)$/.test(name) && name.includes(sep))
  .map((name) => ({ name: name.replaceAll(sep, '/'), text: readFileSync(join(source, name), 'utf8') }));

const folderOf = (name: string) => name.split('/')[0] as string;

function importsOf(text: string): string[] {
  return [...text.matchAll(/\b(?:from|import|require)\s*\(?\s*['"]([^'"]+)['"]/g)].map((match) => match[1] as string);
}

test('every folder of the source has its place in the order', () => {
  expect(files.filter((file) => !folders.includes(folderOf(file.name))).map((file) => file.name)).toEqual([]);
});

test('a file imports only from folders before its own', () => {
  const upward = files.flatMap(({ name, text }) =>
    importsOf(text)
      .filter((path) => path.startsWith('.'))
      .map((path) => relative(source, join(source, name, '..', path)).replaceAll(sep, '/'))
      .filter((target) => folders.indexOf(folderOf(target)) > folders.indexOf(folderOf(name)) || !target.includes('/'))
      .map((target) => `${name} imports ${target}`),
  );
  expect(upward).toEqual([]);
});

/** Those of the names that import from one another, be it round about. */
function inARing(nameOf: (file: string) => string): string[] {
  const imported = new Map<string, Set<string>>();
  for (const { name, text } of files) {
    const others = importsOf(text)
      .filter((path) => path.startsWith('.'))
      .map((path) => nameOf(relative(source, join(source, name, '..', path)).replaceAll(sep, '/')))
      .filter((other) => other !== nameOf(name));
    imported.set(nameOf(name), new Set([...(imported.get(nameOf(name)) ?? []), ...others]));
  }
  // A name may go once all that it imports from has gone; those that can never go stand in a ring.
  const waiting = new Map([...imported].filter(([, others]) => others.size > 0));
  for (let before = -1; before !== waiting.size; ) {
    before = waiting.size;
    for (const [name, others] of waiting) if (![...others].some((other) => waiting.has(other))) waiting.delete(name);
  }
  return [...waiting.keys()];
}

test('no folders import from one another, not even round about', () => {
  expect(inARing((file) => file.slice(0, file.lastIndexOf('/')))).toEqual([]);
});

test('no files import from one another, not even a type', () => {
  expect(inARing((file) => file.replace(/\.(js|ts)$/, ''))).toEqual([]);
});

test('no folder is a heap', () => {
  const folders = files.map(({ name }) => name.slice(0, name.lastIndexOf('/')));
  const heaps = [...new Set(folders)].filter((folder) => folders.filter((other) => other === folder).length > 20);
  expect(heaps).toEqual([]);
});

test('only disk, record, shop, lesson, show and runner touch files, clock, chance or the machine', () => {
  const outside =
    /\bBuffer\.|['"]node:|\bDate\.now\b|\bnew Date\(\)|\bMath\.random\b|\bprocess\.|\bperformance\.|\bfetch\(/;
  const impure = files.filter(({ name, text }) => pure.includes(folderOf(name)) && outside.test(text));
  expect(impure.map((file) => file.name)).toEqual([]);
});

test('the rules of a commission need neither disk nor Node', () => {
  const reached = new Set<string>();
  const follow = (name: string) => {
    if (reached.has(name)) return;
    reached.add(name);
    const text = files.find((file) => file.name === name)?.text ?? '';
    const values = text.replace(/^import type [^;]*;$/gm, '');
    for (const path of importsOf(values).filter((path) => path.startsWith('.')))
      follow(
        relative(source, join(source, name, '..', path))
          .replaceAll(sep, '/')
          .replace(/\.js$/, '.ts'),
      );
  };
  follow('record/commission.ts');
  follow('record/shop-stock.ts');
  const bound = files.filter(
    ({ name, text }) => reached.has(name) && /['"]node:|\bBuffer\.|\bprocess\.|\bnew Date\(\)/.test(text),
  );
  expect(reached.size).toBeGreaterThan(10);
  expect(bound.map((file) => file.name)).toEqual([]);
});

test('what draws and writes pictures needs no bytes of Node', () => {
  const bound = files.filter(({ name, text }) => /^show\//.test(name) && /\bBuffer\./.test(text));
  expect(bound.map((file) => file.name)).toEqual([]);
});
