/** What is wrong with a value, and how it is written. */
export interface ValueSlip {
  what: string;
  write: string;
}

const CURLY = /[‘’‚‛“”„‟`´]/g;
const UNITS = 'in|inch|inches|ft|feet|foot|mm|cm|m';
const FRACTIONS = '½¼¾⅛⅜⅝⅞';

/**
 * The slip of the pen in a value as it was typed, if it holds one: quotation marks that are missing, curly or closed by an
 * apostrophe, a decimal comma, a unit behind a number, a yes or no in other words.
 *
 * @param value  as it stands in the cell, without comma and note
 */
export function valueSlip(value: string): ValueSlip | undefined {
  return quotationSlip(value) ?? bareSlip(value);
}

function quotationSlip(value: string): ValueSlip | undefined {
  const inner = value.slice(1, -1);
  if (/^(['"])/.test(value) && value.length > 1 && value.at(-1) === value[0]) {
    if (!inner.includes(value[0] as string)) return undefined;
    if (/['"]\s*['"]/.test(inner)) return undefined;
    const other = value[0] === "'" ? '"' : "'";
    const ending = value[0] === "'" ? 'the apostrophe' : 'the quotation mark';
    return { what: `${ending} within ${value} ends the text too early`, write: `${other}${inner}${other}` };
  }
  const marks = value.match(CURLY);
  if (marks && /^['"‘’‚‛“”„‟`´]|['"‘’‚‛“”„‟`´]$/.test(value)) {
    const bare = value.replace(/^['"‘’‚‛“”„‟`´]+|['"‘’‚‛“”„‟`´]+$/g, '');
    return { what: `${value} stands in quotation marks that are not straight`, write: quoted(bare) };
  }
  if (/^['"]/.test(value)) return { what: `${value} has no quotation mark at its end`, write: quoted(value.slice(1)) };
  if (/'$/.test(value) || (/"$/.test(value) && !isLength(value)))
    return { what: `${value} has no quotation mark at its beginning`, write: quoted(value.slice(0, -1)) };
  return undefined;
}

function bareSlip(value: string): ValueSlip | undefined {
  const bare = (write: string, why: string): ValueSlip => ({ what: `${value} ${why}`, write });
  if (/^(?:true|false|-?\d+(?:\.\d+)?)$/.test(value)) return undefined;
  if (/^(?:yes|true|on)$/i.test(value)) return bare('true', 'is neither true nor false');
  if (/^(?:no|false|off)$/i.test(value)) return bare('false', 'is neither true nor false');
  if (/^-?\d{1,3}(?:[ ,]\d{3})+(?:\.\d+)?$/.test(value))
    return bare(value.replace(/[ ,]/g, ''), 'is a number with its thousands apart');
  if (/^-?\d+,\d+$/.test(value)) return bare(value.replace(',', '.'), 'has a comma where the point belongs');
  const [, percent] = /^(-?\d+(?:\.\d+)?) *%$/.exec(value) ?? [];
  if (percent)
    return bare(
      `${percent}, or ${Number(percent) / 100} where its note asks for a share`,
      'has a sign behind its number',
    );
  const [, figure] = /^[$€£]? *(-?\d+(?:\.\d+)?) *(?:°? ?[CF]?|[$€£]|lb|h|kg|minutes?|hours?|days?)$/.exec(value) ?? [];
  if (figure) return bare(figure, 'is a number with a unit');
  if (/^\d{4}-\d\d-\d\d$/.test(value)) return bare(quoted(value), 'is a day without quotation marks');
  if (isLength(value)) return bare(quoted(value), 'stands without quotation marks');
  if (/^1 *: *\d+$/.test(value)) return bare(quoted(value), 'stands without quotation marks');
  if (/^[\p{L}\d][^'"{}[\]()=]*$/u.test(value)) return bare(quoted(value), 'is a text without quotation marks');
  return undefined;
}

function isLength(value: string): boolean {
  const number = String.raw`(?:\d+[ -]\d+/\d+|\d+/\d+|\d+(?:\.\d+)?)`;
  const whole = new RegExp(`^(?:${number} *(?:${UNITS}|"|')? *)+[.]?$`, 'i');
  return (whole.test(value) && !/^-?\d+(?:\.\d+)?$/.test(value)) || new RegExp(`^\\d*[${FRACTIONS}]`).test(value);
}

/** In the marks that it does not hold. */
const quoted = (text: string) => (text.includes("'") ? `"${text}"` : `'${text}'`);
