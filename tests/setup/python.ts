import type { TestProject } from 'vitest/node';
import { type PythonEnvironment, pythonEnvironment } from '../../kernel-helpers/src/runner/lab/python-environment.js';

/** Before the tests that need Jupyter: the same Python environment that `npm run lab` uses, made if it is not there. */
export default async function python(project: TestProject): Promise<void> {
  project.provide('python', await pythonEnvironment(project.config.root, console.log));
}

declare module 'vitest' {
  interface ProvidedContext {
    python: PythonEnvironment;
  }
}
