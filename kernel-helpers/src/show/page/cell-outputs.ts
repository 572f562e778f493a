import { toBase64 } from '../kit/base64.js';
import { escapeHtml } from '../kit/escape.js';
import { mathHtml, withoutMathMarks } from './math.js';
import { proseHtml } from './prose.js';
import { isOwnPicture, safeHtml } from './safe-html.js';

/** Text as a notebook keeps it: one string, or its lines. */
export type Lines = string | string[];

/** What a cell put out, as nbformat has it. */
export interface SheetOutput {
  output_type: string;
  /** Of a stream: which. */
  name?: string;
  text?: Lines;
  /** By MIME type. */
  data?: Record<string, unknown>;
  ename?: string;
  evalue?: string;
  traceback?: string[];
}

/** Richest first. */
const kinds = ['text/html', 'text/latex', 'image/svg+xml', 'image/png', 'image/jpeg', 'text/markdown', 'text/plain'];

// biome-ignore lint/suspicious/noControlCharactersInRegex: colour codes of a terminal begin with one
const terminalCodes = /\u001b\[[0-9;?]*[A-Za-z]/g;

/** One output as HTML: nothing in it runs or loads. */
export function outputHtml(output: SheetOutput): string {
  switch (output.output_type) {
    case 'stream':
      return streamHtml(output);
    case 'error': {
      const lines = output.traceback?.length ? output.traceback.join('\n') : `${output.ename}: ${output.evalue}`;
      return `<pre class="error"><strong>This cell failed.</strong>\n${textHtml(lines)}</pre>`;
    }
    default:
      return dataHtml(output.data ?? {});
  }
}

/** The lines of a notebook's text, joined. */
export function joined(text: unknown): string {
  return Array.isArray(text) ? text.join('') : typeof text === 'string' ? text : '';
}

function streamHtml({ name, text }: SheetOutput): string {
  const html = textHtml(joined(text).replace(/\n$/, ''));
  if (html === '') return '';
  return name === 'stderr' ? `<pre class="error"><strong>Message:</strong> ${html}</pre>` : `<pre>${html}</pre>`;
}

function dataHtml(data: Record<string, unknown>): string {
  const kind = kinds.find((candidate) => candidate in data);
  if (!kind) return '';
  const text = joined(data[kind]);
  switch (kind) {
    case 'text/html':
      return safeHtml(text);
    case 'text/latex':
      return mathHtml(withoutMathMarks(text), true);
    case 'text/markdown':
      return proseHtml(text);
    case 'text/plain':
      return `<pre>${textHtml(text)}</pre>`;
    case 'image/svg+xml':
      return picture(kind, toBase64(text), joined(data['text/plain']));
    default:
      return picture(kind, text.replace(/\s/g, ''), joined(data['text/plain']));
  }
}

function picture(kind: string, base64: string, alt: string): string {
  const address = `data:${kind};base64,${base64}`;
  return isOwnPicture(address)
    ? `<img src="${address}" alt="${escapeHtml(alt || 'picture without a description')}">`
    : '';
}

function textHtml(text: string): string {
  return escapeHtml(text.replace(terminalCodes, ''));
}
