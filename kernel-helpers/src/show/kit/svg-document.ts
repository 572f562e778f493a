import { ShopError } from '../../measure/shop-error.js';

const svgNamespace = 'http://www.w3.org/2000/svg';

/**
 * A document of SVG elements alone: what Observable Plot asks of one, and no more. It is written out the same way
 * wherever it runs, and needs no browser. Styles hold for a whole element; there are no selectors and no events.
 */
export class SvgDocument {
  readonly documentElement = new SvgElement(this, 'svg');

  createElementNS(_namespace: string, name: string): SvgElement {
    return new SvgElement(this, name);
  }

  /** Of HTML, which Plot puts around a picture with a title or a legend, there is none. */
  createElement(): never {
    throw new ShopError(
      'plot: title, subtitle, caption and legend are not possible here; label the marks, and give alt and caption',
    );
  }

  createTextNode(text: string): SvgText {
    return new SvgText(text);
  }
}

type SvgNode = SvgElement | SvgText;

class SvgText {
  parentNode: SvgElement | null = null;

  constructor(readonly textContent: string) {}

  cloneNode(_deep: boolean): SvgText {
    return new SvgText(this.textContent);
  }

  get outerHTML(): string {
    return escaped(this.textContent);
  }
}

/** The declarations are its own fields, as `Object.assign` sets them: `fontSize` or `font-size`. */
class SvgStyle {
  [property: string]: unknown;

  setProperty(name: string, value: unknown): void {
    this[name] = value;
  }

  removeProperty(name: string): void {
    delete this[name];
  }
}

/** One element, with the names the DOM has for its parts. */
export class SvgElement {
  readonly namespaceURI = svgNamespace;
  readonly style = new SvgStyle();
  parentNode: SvgElement | null = null;
  childNodes: SvgNode[] = [];
  private readonly attributes = new Map<string, string>();

  constructor(
    readonly ownerDocument: SvgDocument,
    readonly localName: string,
  ) {}

  getAttribute(name: string): string | null {
    return this.attributes.get(name) ?? null;
  }

  hasAttribute(name: string): boolean {
    return this.attributes.has(name);
  }

  setAttribute(name: string, value: unknown): void {
    this.attributes.set(name, String(value));
  }

  setAttributeNS(_namespace: string, name: string, value: unknown): void {
    this.setAttribute(name, value);
  }

  removeAttribute(name: string): void {
    this.attributes.delete(name);
  }

  appendChild<Node extends SvgNode>(node: Node): Node {
    return this.insertBefore(node, null);
  }

  insertBefore<Node extends SvgNode>(node: Node, before: SvgNode | null): Node {
    node.parentNode?.removeChild(node);
    this.childNodes.splice(before ? this.childNodes.indexOf(before) : this.childNodes.length, 0, node);
    node.parentNode = this;
    return node;
  }

  removeChild(node: SvgNode): void {
    this.childNodes.splice(this.childNodes.indexOf(node), 1);
    node.parentNode = null;
  }

  get firstChild(): SvgNode | null {
    return this.childNodes[0] ?? null;
  }

  get children(): SvgElement[] {
    return this.childNodes.filter((node) => node instanceof SvgElement);
  }

  /** The first element of this name inside; no other selector is known. */
  querySelector(name: string): SvgElement | null {
    for (const child of this.children) {
      const found = child.localName === name ? child : child.querySelector(name);
      if (found) return found;
    }
    return null;
  }

  cloneNode(deep: boolean): SvgElement {
    const copy = new SvgElement(this.ownerDocument, this.localName);
    for (const [name, value] of this.attributes) copy.setAttribute(name, value);
    Object.assign(copy.style, this.style);
    if (deep) for (const node of this.childNodes) copy.appendChild(node.cloneNode(deep));
    return copy;
  }

  get textContent(): string {
    return this.childNodes.map((node) => node.textContent).join('');
  }

  set textContent(text: string) {
    this.childNodes = [];
    if (text) this.appendChild(new SvgText(text));
  }

  /** The attribute set last stands first, as in the pictures that sheets have kept so far. */
  get outerHTML(): string {
    const style = Object.entries(this.style).map(([name, value]) => `${hyphenated(name)}:${value}`);
    const all = [...this.attributes];
    if (style.length > 0) all.push(['style', style.join(';')]);
    if (!this.parentNode) all.push(['xmlns', svgNamespace]);
    const attributes = all.reverse().map(([name, value]) => ` ${name}="${escaped(value).replaceAll('"', '&quot;')}"`);
    const start = `<${this.localName}${attributes.join('')}`;
    if (this.childNodes.length === 0) return `${start} />`;
    return `${start}>${this.childNodes.map((node) => node.outerHTML).join('')}</${this.localName}>`;
  }
}

function hyphenated(property: string): string {
  return property.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
}

function escaped(text: string): string {
  return text.replace(/[&<>\u00a0]/g, (character) => entities[character] as string);
}

const entities: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '\u00a0': '&#160;' };
