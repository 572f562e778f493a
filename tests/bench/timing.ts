/** Median time of some runs, ms. */
export function medianOf(runs: number, work: () => unknown): number {
  const times = Array.from({ length: runs }, () => {
    const began = performance.now();
    work();
    return performance.now() - began;
  });
  return times.sort((a, b) => a - b)[Math.floor(runs / 2)] as number;
}

export const say = (what: string, milliseconds: number) =>
  console.log(`${what.padEnd(52)} ${milliseconds.toFixed(1)} ms`);
