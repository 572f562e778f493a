// The package ships no types, and those beside it would slow every kernel's start.
declare module 'd3-random' {
  type Source = () => number;
  export function randomLcg(seed: number): Source;
  export const randomInt: { source(source: Source): (from: number, below: number) => () => number };
  export const randomNormal: { source(source: Source): (mean: number, deviation: number) => () => number };
  export const randomBeta: { source(source: Source): (alpha: number, beta: number) => () => number };
}
