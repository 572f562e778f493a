/** A line of a cell's source: its number, from 1, and its text. */
export interface SourceLine {
  number: number;
  text: string;
}

/**
 * The line of a cell that failed: the one the compiler names, else the one most like the statement that failed as
 * the kernel compiled it. Compiling drops types and blank lines, so its own line numbers do not fit the source.
 *
 * @param error  what the cell wrote to its error stream
 * @param compiled  the compiled statement, when the kernel's guard told it
 */
export function failedLine(source: string, error: string, compiled?: string): SourceLine | undefined {
  const lines = source.split('\n');
  const named = Number(error.match(/^(\d+):\d+ - /m)?.[1] ?? Number.NaN);
  const number = Number.isNaN(named) ? likest(lines, compiled ?? '') : named;
  const text = lines[number - 1]?.trim();
  return text ? { number, text } : undefined;
}

// Below this share of common words, any line would do as well.
const LIKE_ENOUGH = 0.3;

function likest(lines: string[], compiled: string): number {
  const wanted = words(compiled);
  const likeness = lines.map((line) => {
    const here = words(line);
    const common = [...here].filter((word) => wanted.has(word)).length;
    return common / Math.max(1, here.size + wanted.size - common);
  });
  const best = Math.max(...likeness);
  return best >= LIKE_ENOUGH ? likeness.indexOf(best) + 1 : Number.NaN;
}

// What the compiler puts in by itself: exports., (0, helpers_1.name)
function words(code: string): Set<string> {
  return new Set(
    code.replace(/\bexports\.|(\(0, )?\b\w+_\d+\.(default\.)?/g, '').match(/[\p{L}\p{N}_$]+|['"`][^'"`]*['"`]/gu),
  );
}
