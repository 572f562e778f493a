import type { Kernel } from './kernel.js';
import { type KernelOptions, startKernel } from './start-kernel.js';

/** Fresh kernels, one after the other, started ahead of their use. */
export interface KernelQueue {
  /** The next kernel, ready. */
  next(): Promise<Kernel>;
  /** Ends the kernels that were started and not used. */
  close(): void;
}

/**
 * Gives one fresh kernel for each piece of code, and has another starting while that one works.
 *
 * @param firstCells  the first code of each kernel's work: the type checker reads ahead what it imports
 */
export function kernelQueue(firstCells: readonly string[], options: KernelOptions): KernelQueue {
  const over = new AbortController();
  const signal = options.signal ? AbortSignal.any([over.signal, options.signal]) : over.signal;
  const started: Promise<Kernel>[] = [];
  let taken = 0;

  const startAnother = () => {
    const code = firstCells[started.length];
    if (code === undefined) return;
    const kernel = startKernel({ ...options, signal }).then(async (kernel) => {
      if (over.signal.aborted) kernel.process.kill();
      else await kernel.readAhead(code);
      return kernel;
    });
    // One that does not start is reported when its turn comes, and that may be never.
    kernel.catch(() => undefined);
    started.push(kernel);
  };

  return {
    async next() {
      // On two cores a third at a time would only take time from both.
      while (started.length < Math.min(taken + 2, firstCells.length)) startAnother();
      return started[taken++] as Promise<Kernel>;
    },
    close() {
      over.abort();
      for (const kernel of started.slice(taken)) {
        kernel.then(
          ({ process }) => process.kill(),
          () => undefined,
        );
      }
    },
  };
}
