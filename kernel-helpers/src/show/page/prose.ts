import MarkdownIt from 'markdown-it';
import markdownItMath from 'markdown-it-math/no-default-renderer';
import { dollarSign, escapeHtml, nonBreaking } from '../kit/escape.js';
import { mathHtml } from './math.js';
import type { PageGlossary } from './page-glossary.js';
import { isOwnPicture } from './safe-html.js';

/** Where a cell's text stands on the page. */
interface Place {
  /** Id for the first heading met; taken by it. */
  headingId?: string;
  /** Pictures kept in the cell, by name: data by kind. */
  attachments?: Record<string, Record<string, string>>;
  /** The trade's words, for the links to them. */
  words?: PageGlossary;
  /** Whether the link that is open here leads anywhere. */
  leads?: boolean;
}

// HTML in a sheet's prose stays text; quotes stay straight, since " after a figure means inches.
const markdownIt = new MarkdownIt({ html: false, linkify: false, typographer: false });
markdownIt.use(markdownItMath, {
  inlineDelimiters: [['$', '$']],
  blockDelimiters: [['$$', '$$']],
  inlineRenderer: (tex) => mathHtml(tex, false),
  blockRenderer: (tex) => mathHtml(tex, true),
});

const { rules } = markdownIt.renderer;

// The page has its own first heading, so those of a sheet go one down.
rules.heading_open = (tokens, index, options, env: Place, self) => {
  const token = tokens[index] as (typeof tokens)[0];
  token.tag = demoteHeading(token.tag);
  if (env.headingId) {
    token.attrSet('id', env.headingId);
    env.headingId = undefined;
  }
  return self.renderToken(tokens, index, options);
};
rules.heading_close = (tokens, index) => `</${demoteHeading(tokens[index]?.tag ?? 'h2')}>\n`;

// A word of the glossary is explained on the page itself. What else lies outside of the commission's folder is not there for
// whoever is handed the page: its link stays words.
rules.link_open = (tokens, index, options, env: Place, self) => {
  const token = tokens[index] as (typeof tokens)[0];
  const address = token.attrGet('href') ?? '';
  const word = env.words?.idOf(address);
  env.leads = word !== undefined || !/^(?:\.\.)?\//.test(address);
  if (word !== undefined) token.attrSet('href', `#${word}`);
  else token.attrSet('rel', 'noopener noreferrer');
  return env.leads ? self.renderToken(tokens, index, options) : '';
};
rules.link_close = (_tokens, _index, _options, env: Place) => (env.leads ? '</a>' : '');

// Only a picture that is in the sheet itself is shown; one from elsewhere would be loaded by whoever opens the page.
rules.image = (tokens, index, _options, env: Place) => {
  const picture = tokens[index] as (typeof tokens)[0];
  const address = picture.attrGet('src') ?? '';
  const src = address.startsWith('attachment:') ? attached(env, address.slice('attachment:'.length)) : address;
  return isOwnPicture(src)
    ? `<img src="${escapeHtml(src)}" alt="${escapeHtml(picture.content)}">`
    : `[${escapeHtml(picture.content || 'picture')}: ${escapeHtml(address)}]`;
};

rules.text = (tokens, index) => escapeHtml(nonBreaking(tokens[index]?.content ?? ''));

/** A Markdown cell as HTML. */
export function proseHtml(text: string, place: Place = {}): string {
  // The page typesets a formula only where its Markdown has one: a dollar sign needs no element of its own.
  return markdownIt.render(text.replaceAll(dollarSign, '&#36;'), place);
}

function demoteHeading(tag: string): string {
  return `h${Math.min(6, Number(tag.slice(1)) + 1)}`;
}

function attached({ attachments = {} }: Place, address: string): string {
  const name = Object.keys(attachments).find((key) => markdownIt.normalizeLink(key) === address);
  const [kind, data] = Object.entries(attachments[name ?? ''] ?? {})[0] ?? [];
  return kind ? `data:${kind};base64,${data}` : '';
}
