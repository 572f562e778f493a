import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** A sheet of a commission, and how it hangs together with the others. */
export interface SheetLinks {
  /** `04-lid-through-the-year.ipynb` */
  file: string;
  /** Decisions that its code cells ask for. */
  needs: string[];
  /** Decisions that they use where there are any. */
  finds: string[];
  /** Decisions that its code cells make. */
  decides: string[];
  /** Whether they look at the record as a whole. */
  looksBack: boolean;
}

/**
 * The sheets in a folder by name, each with the decisions it needs, uses and makes, read off its own code cells.
 * A file that is not a notebook has neither.
 */
export function sheetLinks(folder: string): SheetLinks[] {
  return readdirSync(folder)
    .filter((file) => file.endsWith('.ipynb'))
    .sort()
    .map((file) => {
      const code = codeOf(join(folder, file));
      return {
        file,
        needs: called('need', code),
        finds: called('find', code),
        decides: called('decide', code),
        looksBack: /\.(?:entries|decisions|drafts|head|reasons)\s*\(/.test(code),
      };
    });
}

function called(method: 'need' | 'find' | 'decide', code: string): string[] {
  const calls = code.matchAll(new RegExp(`\\.${method}\\s*\\(\\s*(['"\`])([\\w-]+)\\1`, 'g'));
  return [...new Set([...calls].map((call) => call[2] as string))];
}

function codeOf(path: string): string {
  try {
    const cells: { cell_type: string; source: string | string[] }[] = JSON.parse(readFileSync(path, 'utf8')).cells;
    const code = cells.filter((cell) => cell.cell_type === 'code').map((cell) => [cell.source].flat().join(''));
    return code.join('\n').replace(/\/\*[\s\S]*?\*\/|(^|\s)\/\/.*$/gm, '');
  } catch {
    return '';
  }
}
