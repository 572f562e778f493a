import sanitizeHtml from 'sanitize-html';

const length = /^\d{1,3}(\.\d+)?(px|em|rem|%)?$/;
const lengths = /^(\d{1,3}(\.\d+)?(px|em|rem|%)?\s*){1,4}$/;

/** Pictures that hold their own data. An SVG shown as an image runs no script and loads nothing. */
const ownPicture = /^data:image\/(png|jpeg|gif|webp|svg\+xml);base64,[A-Za-z0-9+/=\s]+$/;

export function isOwnPicture(address: string): boolean {
  return ownPicture.test(address);
}

/**
 * HTML that a sheet put out, reduced to what text, tables and pictures need. A sheet in a commission's folder may have been
 * edited by anyone: no script, no event handler, no form, no address that is loaded by itself, no style that moves things
 * over others.
 */
export function safeHtml(html: string): string {
  return sanitizeHtml(html, {
    allowedTags: (
      'a abbr b blockquote br caption cite code col colgroup dd del details div dl dt em figcaption figure h3 h4 h5 h6 hr i ' +
      'img ins kbd li ol p pre q s samp section small span strong sub summary sup table tbody td tfoot th thead tr u ul var'
    ).split(' '),
    allowedAttributes: {
      '*': ['class', 'style', 'title'],
      a: ['href', 'rel'],
      img: ['src', 'alt', 'width', 'height'],
      details: ['open'],
      ol: ['start'],
      td: ['colspan', 'rowspan'],
      th: ['colspan', 'rowspan', 'scope'],
    },
    allowedClasses: { '*': ['daybook-*'] },
    allowedStyles: {
      '*': {
        'text-align': [/^(left|right|center)$/],
        'font-weight': [/^(normal|bold)$/],
        'vertical-align': [/^(top|baseline|middle)$/],
        'list-style-type': [/^(none|disc|decimal)$/],
        'border-left': [/^\d{1,2}px (solid|dashed|dotted|double) #[0-9a-f]{3,6}$/],
        margin: [lengths],
        'padding-left': [length],
        'max-width': [length],
        height: [/^auto$/],
      },
    },
    allowedSchemes: ['http', 'https', 'mailto'],
    allowedSchemesByTag: { img: ['data'] },
    allowProtocolRelative: false,
    transformTags: { a: (tagName, attribs) => ({ tagName, attribs: { ...attribs, rel: 'noopener noreferrer' } }) },
    exclusiveFilter: ({ tag, attribs }) => tag === 'img' && !isOwnPicture(attribs.src ?? ''),
  });
}
