const entities: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };

// Control characters and halves of surrogate pairs are not allowed in XML, so a picture that holds one stays blank.
const unprintable =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the ones to take out
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

/** Text as it must be written inside HTML or SVG, in an element or in a quoted attribute. */
export function escapeHtml(text: string): string {
  return text.replace(unprintable, '\ufffd').replace(/[&<>"']/g, (character) => entities[character] as string);
}

/** Figures stay with their fraction and their unit when a line breaks: `9 1/2 in`. */
export function nonBreaking(text: string): string {
  return text.replace(/(?<=\d) (?=\d+\/\d|(?:in|mm|cm|ft|h|%|°C)(?![\w]))/g, '\u00a0');
}

/** Words for people, as they must be written inside HTML: escaped, and no figure torn apart. */
export function wordsHtml(text: string): string {
  return escapeHtml(nonBreaking(text));
}

/**
 * A dollar sign inside Markdown. JupyterLab reads what stands between two of them as mathematics, escaped or not, unless each
 * stands in an element of its own.
 */
export const dollarSign = '<span>&#36;</span>';

/** Text as it must be written inside Markdown so that it stays just that text. */
export function escapeMarkdown(text: string): string {
  const oneLine = text.replace(unprintable, '\ufffd').replace(/[^\S\u00a0]+/g, ' ');
  return oneLine.replace(/[&<>"'\\`*_{}[\]()#+\-.!|~$^=:]/g, (mark) =>
    mark === '$' ? dollarSign : `&#${mark.charCodeAt(0)};`,
  );
}

/**
 * Markdown with values put in that stay plain text, whatever is in them: a client's name, a note.
 * Where the text runs over several lines of a cell, its lines are joined into one; figures stay with fraction and unit.
 *
 * @example show(markdown`For **${brief.client}**, promised for ${brief.promised}.`)
 */
export function markdown(parts: TemplateStringsArray, ...values: (string | number)[]): string {
  const text = parts
    .map((part) => part.replace(/\s*\n\s*/g, ' '))
    .reduce((before, part, i) => `${before}${escapeMarkdown(String(values[i - 1]))}${part}`);
  return nonBreaking(text);
}
