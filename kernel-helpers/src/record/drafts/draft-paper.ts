/**
 * A paper of a draft, marked so that nobody takes it for decided: DRAFT in outline across every printed page of HTML and across
 * a picture, figures under it still to be read. A DXF says it in a comment only: a program that cuts may not show one, and must
 * not get lines that are no part.
 *
 * @param file  its name, which tells what it is; a table is as it was
 * @param what  the decision that was not made
 * @internal
 */
export function draftPaper(file: string, text: string, what: string): string {
  const said = `Draft: ${what} is worked out and not decided. Promise nothing from this paper, and do not work from it.`;
  if (file.endsWith('.html')) return text.replace(/<body[^>]*>/, (body) => `${body}\n${onScreen}${draftMark(said)}`);
  if (file.endsWith('.svg')) return text.replace(/<\/svg>\s*$/, (end) => `${acrossPicture(text)}${end}`);
  if (file.endsWith('.dxf')) return `999\n${said}\n${text}`;
  return text;
}

// In print the sentence would push a template of true size off its page.
const onScreen = '<style>@media print { [data-draft="said"] { display: none } }</style>';

/**
 * DRAFT across each page of an HTML document, to be put at the head of its body.
 *
 * @param said  a sentence, as HTML
 * @internal
 */
export function draftMark(said: string): string {
  // Letters in outline, so that figures under them can be read; what is fixed stands on every page that is printed.
  return `<aside data-draft="said" style="border: 3px double #000; padding: 0.6em 1em; margin: 0 0 1em; font: bold 1rem/1.4 sans-serif">${said}</aside>
<div data-draft="across" aria-hidden="true" style="position: fixed; inset: 0; z-index: 9; display: grid; place-items: center; overflow: hidden; pointer-events: none"><span style="font: 900 min(24vw, 20vh)/1 sans-serif; letter-spacing: 0.06em; rotate: -35deg; color: transparent; -webkit-text-stroke: 1.5px #767676">DRAFT</span></div>`;
}

function acrossPicture(svg: string): string {
  const [x = 0, y = 0, width = 0, height = 0] =
    /\bviewBox="([^"]+)"/
      .exec(svg)?.[1]
      ?.split(/[\s,]+/)
      .map(Number) ?? [];
  const [size, middle] = [0.24 * Math.min(width, height), [x + width / 2, y + height / 2].join(' ')];
  return `<text data-draft="across" transform="translate(${middle}) rotate(-35)" text-anchor="middle" dominant-baseline="central" font-family="sans-serif" font-weight="900" font-size="${size}" fill="none" stroke="#767676" stroke-width="${size / 80}">DRAFT</text>`;
}
