// The package brings no types; an @types package would be read by every kernel at its start.
declare module 'nspell' {
  export default function nspell(dictionary: { aff: Uint8Array; dic: Uint8Array }): {
    correct(word: string): boolean;
    suggest(word: string): string[];
    add(word: string): void;
  };
}
