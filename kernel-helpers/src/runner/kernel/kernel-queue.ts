import type { Kernel } from './kernel.js';
import { type KernelOptions, startKernel } from './start-kernel.js';

/** Fresh kernels, one after the other, started ahead of their use. */
export interface KernelQueue {
  /** The next kernel, ready. */
  next(): Promise<Kernel>;
  /** Ends the kernels that were started and not used. */
  close(): void;
}

/** Gives so many fresh kernels, and has another starting while one works. */
export function kernelQueue(count: number, options: KernelOptions): KernelQueue {
  const over = new AbortController();
  const signal = options.signal ? AbortSignal.any([over.signal, options.signal]) : over.signal;
  const started: Promise<Kernel>[] = [];
  let taken = 0;

  const startAnother = () => {
    const kernel = startKernel({ ...options, signal });
    // One that does not start is reported when its turn comes, and that may be never.
    kernel.catch(() => undefined);
    started.push(kernel);
  };

  return {
    async next() {
      // On two cores a third at a time would only take time from both.
      while (started.length < Math.min(taken + 2, count)) startAnother();
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
