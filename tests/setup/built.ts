import { spawnSync } from 'node:child_process';
import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';

/** Before any test: the bundle that the sheets import is built anew when a source is younger than it. */
export default function built({ config }: TestProject): void {
  const workspace = join(config.root, 'kernel-helpers');
  const sources = readdirSync(join(workspace, 'src'), { recursive: true, encoding: 'utf8' }).map((name) =>
    join('src', name),
  );
  const inputs = [...sources, 'build.ts', 'package.json', 'tsconfig.build.json'];
  const youngest = Math.max(...inputs.map((name) => age(join(workspace, name))));
  if (age(join(workspace, 'dist', 'index.js')) >= youngest) return;
  console.log('Building kernel-helpers ...');
  const npm = spawnSync('npm run build -w kernel-helpers', { cwd: config.root, shell: true, encoding: 'utf8' });
  if (npm.status !== 0) throw new Error(`kernel-helpers cannot be built:\n${npm.stdout}${npm.stderr}`);
}

function age(file: string): number {
  return statSync(file, { throwIfNoEntry: false })?.mtimeMs ?? 0;
}
