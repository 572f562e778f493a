/** Text as base64 of its UTF-8, as a data address holds it; a half of a surrogate pair becomes U+FFFD. */
export function toBase64(text: string): string {
  return btoa(Array.from(new TextEncoder().encode(text), (byte) => String.fromCharCode(byte)).join(''));
}

/** The text in base64 of its UTF-8. */
export function fromBase64(data: string): string {
  return new TextDecoder('utf-8', { ignoreBOM: true }).decode(
    Uint8Array.from(atob(data), (character) => character.charCodeAt(0)),
  );
}
