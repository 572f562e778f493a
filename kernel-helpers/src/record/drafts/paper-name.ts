const possible = /^[a-z0-9][a-z0-9-]*\.(?:html|dxf|svg|csv)$/;
const taken = ['index.html'];

/** Whether a paper can have this name: nothing that leads out of its folder or over a sheet or the record. @internal */
export function isPaperName(file: string): boolean {
  return possible.test(file) && !taken.includes(file);
}
