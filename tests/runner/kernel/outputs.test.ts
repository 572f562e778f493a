import { expect, test } from 'vitest';
import { request } from '../../../kernel-helpers/src/runner/kernel/message.js';
import {
  addOutput,
  type Displays,
  errorText,
  lostError,
  type Output,
} from '../../../kernel-helpers/src/runner/kernel/outputs.js';

function outputsOf(...messages: [type: string, content: Record<string, unknown>][]): Output[] {
  const outputs: Output[] = [];
  const displays: Displays = new Map();
  for (const [type, content] of messages) addOutput(outputs, request(type, content, 's'), displays);
  return outputs;
}

test('neighbouring texts of one stream are one output, and the order of kinds is kept', () => {
  const html = { data: { 'text/html': '<p>' }, metadata: {}, transient: {} };
  expect(
    outputsOf(
      ['stream', { name: 'stdout', text: 'a\n' }],
      ['stream', { name: 'stdout', text: 'b\n' }],
      ['stream', { name: 'stderr', text: 'oh\n' }],
      ['display_data', html],
      ['stream', { name: 'stdout', text: 'c\n' }],
    ),
  ).toEqual([
    { output_type: 'stream', name: 'stdout', text: 'a\nb\n' },
    { output_type: 'stream', name: 'stderr', text: 'oh\n' },
    { output_type: 'display_data', data: { 'text/html': '<p>' }, metadata: {} },
    { output_type: 'stream', name: 'stdout', text: 'c\n' },
  ]);
});

test('an updated display changes where it stands', () => {
  const shown = (text: string) => ({ data: { 'text/plain': text }, metadata: {}, transient: { display_id: 'd1' } });
  expect(
    outputsOf(
      ['display_data', shown('1')],
      ['display_data', { data: {}, metadata: {} }],
      ['update_display_data', shown('2')],
    ),
  ).toEqual([
    { output_type: 'display_data', data: { 'text/plain': '2' }, metadata: {} },
    { output_type: 'display_data', data: {}, metadata: {} },
  ]);
});

test('what a notebook cannot hold, such as a comm message, is left out', () => {
  expect(outputsOf(['comm_open', { comm_id: 'x' }], ['execute_input', { code: '1' }])).toEqual([]);
});

test('an error that nobody waited for is told from what a sheet prints', () => {
  const text = 'UnhandledPromiseRejection: the board is too short\n';
  expect(lostError(outputsOf(['stream', { name: 'stderr', text }]))).toBe('the board is too short');
  expect(lostError(outputsOf(['stream', { name: 'stdout', text }]))).toBeUndefined();
  expect(lostError(outputsOf(['stream', { name: 'stderr', text: 'a warning\n' }]))).toBeUndefined();
  expect(errorText(outputsOf(['error', { ename: 'TypeError', evalue: 'no' }]))).toBe('TypeError: no');
});
