import type { Kernel } from './kernel.js';
import { type KernelOptions, startKernel } from './start-kernel.js';

/** Fresh kernels, one after the other, started ahead of their use. */
export interface KernelQueue {
  /** The next kernel, ready. @param ahead  whether to have another starting while it works */
  next(ahead: boolean): Promise<Kernel>;
  /** Ends the kernels that were started and not used. */
  close(): void;
}

/** Gives fresh kernels. */
export function kernelQueue(options: KernelOptions): KernelQueue {
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
    async next(ahead) {
      // On two cores a third at a time would only take time from both.
      while (started.length < taken + (ahead ? 2 : 1)) startAnother();
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
