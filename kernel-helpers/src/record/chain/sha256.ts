import { createHash } from 'node:crypto';

/** SHA-256 of bytes, or of a text in UTF-8, as 64 hexadecimal digits. @internal */
export function sha256(data: string | Uint8Array): string {
  return createHash('sha256').update(data).digest('hex');
}
