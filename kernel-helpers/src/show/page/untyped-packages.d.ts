// These packages carry no types of their own here, and their @types would slow every kernel start: tslab loads them all.
declare module 'sanitize-html' {
  interface Frame {
    tag: string;
    attribs: Record<string, string>;
  }
  interface Options {
    allowedTags: string[];
    allowedAttributes: Record<string, string[]>;
    allowedClasses: Record<string, string[]>;
    allowedStyles: Record<string, Record<string, RegExp[]>>;
    allowedSchemes: string[];
    allowedSchemesByTag: Record<string, string[]>;
    allowProtocolRelative: boolean;
    transformTags: Record<
      string,
      (tagName: string, attribs: Record<string, string>) => { tagName: string; attribs: Record<string, string> }
    >;
    exclusiveFilter: (frame: Frame) => boolean;
  }
  export default function sanitizeHtml(dirty: string, options: Options): string;
}

declare module 'markdown-it' {
  interface Token {
    tag: string;
    content: string;
    attrGet(name: string): string | null;
    attrSet(name: string, value: string): void;
  }
  type Rule = (tokens: Token[], index: number, options: object, env: never, self: Renderer) => string;
  interface Renderer {
    rules: Record<string, Rule | undefined>;
    renderToken(tokens: Token[], index: number, options: object): string;
  }
  export default class MarkdownIt {
    constructor(options?: { html?: boolean; linkify?: boolean; typographer?: boolean });
    renderer: Renderer;
    use<O>(plugin: (markdownIt: MarkdownIt, options?: O) => void, options?: O): this;
    normalizeLink(address: string): string;
    render(text: string, env?: object): string;
  }
}

declare module 'markdown-it-math/no-default-renderer' {
  import type MarkdownIt from 'markdown-it';

  interface Options {
    inlineDelimiters?: string | [string, string][];
    blockDelimiters?: string | [string, string][];
    inlineRenderer: (tex: string) => string;
    blockRenderer: (tex: string) => string;
  }
  export default function markdownItMath(markdownIt: MarkdownIt, options?: Options): void;
}
