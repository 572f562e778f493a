import type { Message } from './message.js';

/** Content of a display by MIME type. */
export type MimeBundle = Record<string, unknown>;

/** One output of a code cell, as nbformat 4.5 has it; texts are whole strings here and lists of lines in the file. */
export type Output =
  | { output_type: 'stream'; name: 'stdout' | 'stderr'; text: string }
  | { output_type: 'display_data'; data: MimeBundle; metadata: Record<string, unknown> }
  | {
      output_type: 'execute_result';
      data: MimeBundle;
      metadata: Record<string, unknown>;
      execution_count: number | null;
    }
  | { output_type: 'error'; ename: string; evalue: string; traceback: string[] };

/** Displays of one kernel that a later message may update, by display id. */
export type Displays = Map<string, Display>;
type Display = Extract<Output, { data: MimeBundle }>;

/** What iopub messages carry, by kind; trusted as far as their signature. */
interface Published {
  name: 'stdout' | 'stderr';
  text: string;
  data: MimeBundle;
  metadata?: Record<string, unknown>;
  transient?: { display_id?: string };
  execution_count: number;
  ename: string;
  evalue: string;
  traceback?: string[];
}

/**
 * Adds what an iopub message shows to the outputs of its cell. Neighbouring texts of one stream become one output.
 *
 * @param displays  the kernel's displays so far; updated
 */
export function addOutput(outputs: Output[], message: Message, displays: Displays): void {
  const content = message.content as unknown as Published;
  const { data, metadata = {}, transient, execution_count } = content;
  const type = message.header.msg_type;
  if (type === 'stream') {
    const last = outputs.at(-1);
    if (last?.output_type === 'stream' && last.name === content.name) last.text += content.text;
    else outputs.push({ output_type: type, name: content.name, text: content.text });
  } else if (type === 'display_data' || type === 'execute_result') {
    const shown: Display =
      type === 'display_data'
        ? { output_type: type, data, metadata }
        : { output_type: type, data, metadata, execution_count };
    outputs.push(shown);
    if (transient?.display_id) displays.set(transient.display_id, shown);
  } else if (type === 'update_display_data') {
    const shown = displays.get(transient?.display_id ?? '');
    if (shown) Object.assign(shown, { data, metadata });
  } else if (type === 'error') {
    const { ename, evalue, traceback = [] } = content;
    outputs.push({ output_type: type, ename, evalue, traceback });
  }
}

/** What the cell wrote to its error stream. */
export function errorText(outputs: Output[]): string {
  const texts = outputs.map((output) => {
    if (output.output_type === 'error') return `${output.ename}: ${output.evalue}`;
    return output.output_type === 'stream' && output.name === 'stderr' ? output.text : '';
  });
  return texts.join('').trim();
}

/** An error that no one waited for: tslab prints it so, and answers `ok` all the same. */
export function lostError(outputs: Output[]): string | undefined {
  return errorText(outputs).match(/^(?:UnhandledPromiseRejection|UncaughtException): ([\s\S]*)/m)?.[1];
}
