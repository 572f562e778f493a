const SIGNALS = { SIGINT: 130, SIGTERM: 143, SIGHUP: 129 } as const;

/** What a command looks at to stop cleanly. */
export interface StopSignal {
  /** Aborted by Ctrl-C, or by the system's own way of asking a program to end. */
  signal: AbortSignal;
  /** The exit code that tells so to the shell; undefined while nobody asked. */
  exitCode(): number | undefined;
}

/** Listens for Ctrl-C and its like. Asked a second time, the program ends at once. */
export function stopSignal(): StopSignal {
  const controller = new AbortController();
  let exitCode: number | undefined;
  for (const [name, code] of Object.entries(SIGNALS)) {
    process.on(name, () => {
      if (exitCode !== undefined) process.exit(code);
      exitCode = code;
      controller.abort();
    });
  }
  return { signal: controller.signal, exitCode: () => exitCode };
}
