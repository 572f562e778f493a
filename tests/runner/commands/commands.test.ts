import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { commandNamed, readArguments, wantsHelp } from '../../../kernel-helpers/src/runner/commands/arguments.js';
import { commandHelp, commands, formOf, helpText } from '../../../kernel-helpers/src/runner/commands/commands.js';

const root = join(import.meta.dirname, '..', '..', '..');

test('help is one line a command, with its form and what it does', () => {
  const lines = helpText().split('\n');
  expect(lines).toHaveLength(commands.length);
  expect(lines[0]).toMatch(/^npm start {2,}works a first piece/);
  expect(helpText()).toMatch(/^npm run work -- <commission> {2,}runs the sheets .*\(--limit --who --decide --all/m);
});

test('help for one command says what can be added to it', () => {
  expect(commandHelp(commandNamed('check'))).toMatch(
    /^npm run check -- <commission> .*\n.*keeps nothing.*\n {2}--limit seconds .*\n {2}--reference 8:3fa4c0d19b2e {2}an entry/,
  );
});

test.each([[], ['help'], ['--help'], ['-h'], ['help', 'work'], ['work', '--help'], ['work', 'tea chest', '-h']])(
  '%j asks for help',
  (...typed) => {
    expect(wantsHelp(typed)).toBe(true);
  },
);

test('a commission called help can be worked', () => {
  expect(wantsHelp(['work', 'help'])).toBe(false);
});

test('every command can be run by npm, and none of them is left out', () => {
  const { scripts } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
    scripts: Record<string, string>;
  };
  const ours = Object.entries(scripts).filter(([, script]) => script.includes('dist/command.js'));
  expect(ours.map(([name]) => name).sort()).toEqual(commands.map(({ name }) => name).sort());
  for (const [name, script] of ours) expect(script).toBe(`node kernel-helpers/dist/command.js ${name}`);
});

test('what stands behind a command is read as the command has it', () => {
  const typed = ['tea', 'chest', '--limit', '60', '--who=the maker'];
  expect(readArguments(commandNamed('work'), typed)).toEqual({
    given: 'tea chest',
    values: { limit: '60', who: 'the maker' },
    said: new Set(),
  });
  expect(readArguments(commandNamed('lab'), ['--no-browser']).said).toEqual(new Set(['no-browser']));
});

test.each([
  ['work', ['--fast'], '--fast is not possible here; possible: npm run work -- <commission> [--limit seconds]'],
  ['work', ['-x'], '-x is not possible here; possible: npm run work'],
  ['work', ['--who', ' '], '--who needs a value: npm run work'],
  ['lab', ['--register=yes'], '--register takes no value: npm run lab'],
  ['contents', ['tea-chest'], '"tea-chest" is not possible here; possible: npm run contents'],
])('%s %j is refused with what is possible', (name, typed, message) => {
  expect(() => readArguments(commandNamed(name), typed)).toThrow(message);
});

test.each([
  ['wrok', 'work'],
  ['unpak', 'unpack'],
  ['chekc', 'check'],
])('%s is no command, and %s is proposed', (typed, nearest) => {
  const command = commands.find(({ name }) => name === nearest);
  expect(() => commandNamed(typed)).toThrow(`"${typed}" is no command; nearest: ${command && formOf(command)}.`);
});
