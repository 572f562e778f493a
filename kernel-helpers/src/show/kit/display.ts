/** One thing to look at, ready for a notebook or the page: what kind of text it is, and the text. */
export interface DisplayItem {
  readonly mime: 'text/html' | 'text/latex' | 'text/markdown' | 'text/plain';
  readonly text: string;
}

/**
 * Puts things under the cell, in the order given. A plain string is shown as Markdown.
 * Outside the kernel (a test, a script) it does nothing.
 */
export function show(...items: (DisplayItem | string | readonly DisplayItem[])[]): void {
  const display = kernelDisplays()?.display;
  if (!display) return;
  for (const item of items.flat()) {
    const { mime, text } = typeof item === 'string' ? { mime: 'text/markdown', text: item } : item;
    display.raw(mime, mime === 'text/html' ? withoutMath(text) : text);
  }
}

/**
 * Keeps a place under the cell, to be filled later and filled anew as often as need be, from cells further down too. Outside the
 * kernel filling it does nothing.
 */
export function place(): (item: DisplayItem) => void {
  const display = kernelDisplays()?.newDisplay();
  return ({ mime, text }) => display?.raw(mime, mime === 'text/html' ? withoutMath(text) : text);
}

/** HTML in which `$` stands for dollars: JupyterLab (MathJax 3) and nbconvert (MathJax 2) look for formulas there too. */
function withoutMath(html: string): string {
  return `<div class="mathjax_ignore tex2jax_ignore">${html}</div>`;
}

interface KernelDisplay {
  raw(mime: string, text: string): void;
}

interface KernelDisplays {
  display: KernelDisplay;
  /** One that is shown when it is first written to, and written over after that. */
  newDisplay(): KernelDisplay;
}

// The kernel's own require knows the tslab that runs; importing it would start a TypeScript compiler wherever there is no kernel.
function kernelDisplays(): KernelDisplays | undefined {
  const { __tslab__: kernel } = globalThis as { __tslab__?: { require: (name: 'tslab') => KernelDisplays } };
  return kernel?.require('tslab');
}
