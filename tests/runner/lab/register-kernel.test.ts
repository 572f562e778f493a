import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { isAbsolute, join } from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import {
  registerKernel,
  unregisterKernel,
  userKernelFolder,
} from '../../../kernel-helpers/src/runner/lab/register-kernel.js';

const root = join(import.meta.dirname, '..', '..', '..');
let data: string;
let folder: string;
const said: string[] = [];
const say = (line: string) => said.push(line);

beforeEach(() => {
  data = mkdtempSync(join(tmpdir(), 'jupyter-'));
  vi.stubEnv('JUPYTER_DATA_DIR', data);
  folder = userKernelFolder();
  said.length = 0;
});

afterEach(() => {
  vi.unstubAllEnvs();
  rmSync(data, { recursive: true });
});

test('the kernel goes where Jupyter and VS Code look, with whole paths to files that are there', () => {
  registerKernel(root, folder, say);
  expect(folder).toBe(join(data, 'kernels', 'tslab'));
  const { argv, language } = JSON.parse(readFileSync(join(folder, 'kernel.json'), 'utf8'));
  expect(argv[0]).toBe(process.execPath);
  const tslab = argv.find((part: string) => part.endsWith('tslab'));
  expect(isAbsolute(tslab) && existsSync(tslab)).toBe(true);
  expect(argv.join(' ')).not.toContain('{resource_dir}');
  expect(argv).toContain('{connection_file}');
  expect(language).toBe('typescript');
  expect(said.join('\n')).toContain(folder);
});

test('taking it back removes that and nothing else', () => {
  const neighbour = join(data, 'kernels', 'another');
  mkdirSync(neighbour, { recursive: true });
  registerKernel(root, folder, say);
  unregisterKernel(folder, say);
  expect(existsSync(folder)).toBe(false);
  expect(existsSync(neighbour)).toBe(true);
});

test("a kernel of that name that is the maker's own is neither written over nor removed", () => {
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'kernel.json'), '{"argv":["tslab"]}');
  expect(() => registerKernel(root, folder, say)).toThrow('this project did not put there');
  unregisterKernel(folder, say);
  expect(readFileSync(join(folder, 'kernel.json'), 'utf8')).toBe('{"argv":["tslab"]}');
});
