import { join } from 'node:path';
import { projectFolder } from '../find/project-folder.js';
import { readNotebook } from '../sheets/notebook.js';

/**
 * What the words of the trade mean, by the word, as the glossary in `worksheets/` has them: a heading each, and its sentence.
 *
 * @throws ShopError  when the glossary is not there or cannot be read
 */
export function readGlossary(): Map<string, string> {
  const { cells } = readNotebook(join(projectFolder(), 'worksheets', 'glossary.ipynb'));
  const entries = cells.flatMap(({ source }) => [...source.matchAll(/^### (.+)\n(.+)$/gm)]);
  return new Map(entries.map(([, word = '', meaning = '']) => [word.trim(), meaning.trim()]));
}
