import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { basename, dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Versions } from './entry.js';

const from = createRequire(import.meta.url);

/**
 * The versions that a decision is made with.
 *
 * @param data  digest of each data file, by name
 * @internal
 */
export function versionsInUse(data: Record<string, string>): Versions {
  return {
    node: process.versions.node,
    ...kernelVersions(),
    helpers: from('kernel-helpers/package.json').version,
    build: buildDigest(),
    data,
  };
}

/** What a sheet runs with here: Node, the kernel's own program, the built helpers with the data in them. @internal */
export function runsWith(): string {
  return [process.versions.node, from('tslab/package.json').version, buildDigest()].join(' ');
}

function kernelVersions(): Pick<Versions, 'tslab' | 'typescript'> {
  // The kernel sets this global; a decision made by a script did not go through it.
  if (!('__tslab__' in globalThis)) return {};
  const fromKernel = createRequire(from.resolve('tslab/package.json'));
  return {
    tslab: from('tslab/package.json').version,
    typescript: fromKernel('@tslab/typescript-for-tslab/package.json').version,
  };
}

let digest: string | undefined;

/** Digest of the built modules that a sheet loads: two builds of one version number can differ. */
function buildDigest(): string {
  const folder = dirname(fileURLToPath(import.meta.url));
  if (basename(folder) !== 'dist') return 'source';
  if (digest === undefined) {
    const hash = createHash('sha256');
    const modules = readdirSync(folder).filter((name) => name.endsWith('.js') && name !== 'command.js');
    for (const name of modules.sort()) hash.update(readFileSync(join(folder, name)));
    digest = hash.digest('hex').slice(0, 16);
  }
  return digest;
}
