// data/*.json is bundled in; each file is checked where it is read.
declare module '*.json' {
  const data: unknown;
  export default data;
}
