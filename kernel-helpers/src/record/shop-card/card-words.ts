/** A field's value as a maker would write it: `1/8 in`, `P80, P100`, `widest 8 in, least length 12 in`. */
export function cardWords(value: unknown): string {
  if (Array.isArray(value)) return value.length === 0 ? 'none' : value.map(cardWords).join(', ');
  if (typeof value === 'object' && value !== null)
    return Object.entries(value)
      .map(([field, each]) => `${fieldWords(field)} ${cardWords(each)}`)
      .join(', ');
  if (value === '') return 'none';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return String(value);
}

/** A field's name in words: `hand saw kerf`. */
export function fieldWords(field: string): string {
  return field
    .replace(/TemperatureC$/, ' °C')
    .replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)
    .replace(' °c', ' °C');
}
