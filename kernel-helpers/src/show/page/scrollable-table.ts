/**
 * Attributes of a block that may be wider than the page and is then moved sideways: reached with the keyboard too.
 *
 * @param label  what it is, for whoever hears it
 */
export function scrollable(label: string): string {
  return `tabindex="0" role="group" aria-label="${label}"`;
}

/** Columns that a page at twice its size has no room for. */
const many = 7;

/** Attributes of a block of HTML that holds a wide table; none for any other. */
export function scrollableTable(html: string): string {
  return (html.match(/<th scope="col"/g) ?? []).length < many ? '' : ` ${scrollable('Wide table')}`;
}
