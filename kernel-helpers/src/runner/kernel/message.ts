import { createHmac, randomUUID, timingSafeEqual } from 'node:crypto';

/** Who says what: the header of a Jupyter message. */
export interface Header {
  msg_id: string;
  msg_type: string;
  session: string;
  username: string;
  date: string;
  version: string;
}

/** A Jupyter message without its routing prefix. */
export interface Message {
  header: Header;
  /** Header of the message that this one answers; empty for a request. */
  parent: Partial<Header>;
  metadata: Record<string, unknown>;
  content: Record<string, unknown>;
}

const DELIMITER = Buffer.from('<IDS|MSG>');

/** A new request of this type. */
export function request(type: string, content: Record<string, unknown>, session: string): Message {
  return {
    header: {
      msg_id: randomUUID(),
      msg_type: type,
      session,
      username: 'runner',
      date: new Date().toISOString(),
      version: '5.3',
    },
    parent: {},
    metadata: {},
    content,
  };
}

/**
 * The frames that go over the wire: delimiter, HMAC-SHA256 signature in hex, then the four parts as JSON.
 *
 * @see Jupyter messaging protocol 5.3, "The wire protocol"
 */
export function encode(message: Message, key: string): Buffer[] {
  const parts = [message.header, message.parent, message.metadata, message.content].map((part) =>
    Buffer.from(JSON.stringify(part)),
  );
  return [DELIMITER, Buffer.from(sign(parts, key)), ...parts];
}

/** The message in these frames, or nothing when the signature is not that of the key or the frames make no message. */
export function decode(frames: Buffer[], key: string): Message | undefined {
  const start = frames.findIndex((frame) => frame.equals(DELIMITER));
  const [signature, ...parts] = frames.slice(start + 1);
  if (start < 0 || !signature || parts.length < 4) return undefined;
  const expected = Buffer.from(sign(parts, key));
  if (signature.length !== expected.length || !timingSafeEqual(signature, expected)) return undefined;
  try {
    const [header, parent, metadata, content] = parts.map((part) => JSON.parse(part.toString('utf8')));
    return typeof header?.msg_type === 'string' ? { header, parent, metadata, content } : undefined;
  } catch {
    return undefined;
  }
}

function sign(parts: Buffer[], key: string): string {
  const hmac = createHmac('sha256', key);
  for (const part of parts) hmac.update(part);
  return hmac.digest('hex');
}
