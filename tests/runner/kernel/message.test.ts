import fc from 'fast-check';
import { expect, test } from 'vitest';
import { decode, encode, request } from '../../../kernel-helpers/src/runner/kernel/message.js';

const key = 'a key of this test';
const frames = (content = {}) => encode(request('execute_request', content, 'session'), key);

test('a signed message comes out as it went in, whatever the kernel put before it', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), fc.uint8Array(), (code, routing) => {
      fc.pre(Buffer.from(routing).toString() !== '<IDS|MSG>');
      const message = request('execute_request', { code }, 'session');
      expect(decode([Buffer.from(routing), ...encode(message, key)], key)).toEqual(message);
    }),
  );
});

test('a message with one byte changed anywhere is refused', () => {
  const whole = frames({ code: '1 + 1' });
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 5 }), fc.nat(), fc.integer({ min: 1, max: 255 }), (part, at, flip) => {
      const changed = whole.map((frame) => Buffer.from(frame));
      const frame = changed[part] as Buffer;
      frame[at % frame.length] = (frame[at % frame.length] as number) ^ flip;
      expect(decode(changed, key)).toBeUndefined();
    }),
  );
});

test('a message signed with another key, with none, or cut short is refused', () => {
  expect(decode(encode(request('status', {}, 's'), 'another key'), key)).toBeUndefined();
  expect(decode([frames()[0] as Buffer, Buffer.from(''), ...frames().slice(2)], key)).toBeUndefined();
  expect(decode(frames().slice(0, 5), key)).toBeUndefined();
  expect(decode(frames().slice(1), key)).toBeUndefined();
  expect(decode([], key)).toBeUndefined();
});
