import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { notebooks, proseOf, root, withoutCode } from './markdown-of.js';

const files = [...notebooks, 'README.md', 'DEVELOPERS.md'];
const glossary = 'worksheets/glossary.ipynb';
const lessons = notebooks.filter((file) => file.startsWith('worksheets/lessons/'));

/** Targets of `[text](target)` and of pictures. */
const linksOf = (file: string) =>
  [...withoutCode(proseOf(file)).matchAll(/\]\(([^)\s]+)\)/g)].map((match) => match[1] as string);

const headingsOf = (file: string) => [...withoutCode(proseOf(file)).matchAll(/^#+ (.+)$/gm)].map((match) => match[1]);

/** How JupyterLab names a heading: its words, joined by dashes. */
const anchorsOf = (file: string) => headingsOf(file).map((heading) => heading?.trim().replaceAll(' ', '-'));

/** What is wrong with a link, if anything. */
function broken(file: string, target: string): string | undefined {
  if (/^https?:/.test(target)) return undefined;
  const [path = '', anchor] = target.split('#');
  const linked = path === '' ? file : join(dirname(file), path).replaceAll('\\', '/');
  if (!existsSync(join(root, linked))) return `${target}: there is no ${linked}`;
  if (anchor === undefined || anchorsOf(linked).includes(decodeURIComponent(anchor))) return undefined;
  return `${target}: ${linked} has no heading of that name`;
}

test.each(files)('every link of %s leads somewhere', (file) => {
  expect(linksOf(file).flatMap((target) => broken(file, target) ?? [])).toEqual([]);
});

test('the sheet to start with leads to every lesson, to the glossary and to the sheets of a commission', () => {
  const links = linksOf('worksheets/start-here.ipynb');
  for (const lesson of lessons) expect(links).toContain(lesson.replace('worksheets/', ''));
  expect(links).toEqual(expect.arrayContaining(['glossary.ipynb', 'commission/01-brief.ipynb']));
});

test.each(lessons.slice(0, -1))('%s leads on to the next lesson', (lesson) => {
  const next = lessons[lessons.indexOf(lesson) + 1]?.split('/').at(-1);
  expect(linksOf(lesson)).toContain(next);
});

describe('the glossary', () => {
  const terms = [...proseOf(glossary).matchAll(/^### (.+)\n(.+)$/gm)].map((match) => [match[1], match[2]] as const);
  const names = terms.map(([term]) => term ?? '');

  test('has forty to seventy words in alphabetical order, each once', () => {
    expect(terms.length).toBeGreaterThanOrEqual(40);
    expect(terms.length).toBeLessThanOrEqual(70);
    expect(names).toEqual([...new Set(names)].sort((a, b) => a.toLowerCase().localeCompare(b.toLowerCase(), 'en')));
  });

  test('says each in one sentence', () => {
    for (const [term, sentence] of terms) expect(`${term}: ${sentence}`).toMatch(/^[^.!?]+\.$/);
  });

  test('is linked from every lesson and every sheet of a commission, two to nine words each, and each word once', () => {
    for (const file of notebooks.filter((name) => /^worksheets\/(?:lessons|commission|pieces)\//.test(name))) {
      const words = linksOf(file).filter((target) => target.includes('glossary.ipynb#'));
      expect(words.length, file).toBeGreaterThanOrEqual(2);
      expect(words.length, file).toBeLessThanOrEqual(9);
      expect(new Set(words).size, file).toBe(words.length);
    }
  });
});
