const entities: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };

// Control characters and halves of surrogate pairs are not allowed in XML, so a picture that holds one stays blank.
const unprintable =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the ones to take out
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

/** Text as it must be written inside HTML or SVG, in an element or in a quoted attribute. */
export function escapeHtml(text: string): string {
  return text.replace(unprintable, '\ufffd').replace(/[&<>"']/g, (character) => entities[character] as string);
}

/** Text as it must be written inside Markdown so that it stays just that text. */
export function escapeMarkdown(text: string): string {
  const oneLine = text.replace(unprintable, '\ufffd').replace(/\s+/g, ' ');
  return oneLine.replace(/[&<>"'\\`*_{}[\]()#+\-.!|~$^=:]/g, (mark) => `&#${mark.charCodeAt(0)};`);
}

/**
 * Markdown with values put in that stay plain text, whatever is in them: a client's name, a note.
 * Where the text runs over several lines of a cell, its lines are joined into one.
 *
 * @example show(markdown`For **${brief.client}**, promised for ${brief.promised}.`)
 */
export function markdown(parts: TemplateStringsArray, ...values: (string | number)[]): string {
  return parts
    .map((part) => part.replace(/\s*\n\s*/g, ' '))
    .reduce((text, part, i) => `${text}${escapeMarkdown(String(values[i - 1]))}${part}`);
}
