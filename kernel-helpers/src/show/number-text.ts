/**
 * A number as it is shown: in full where that is short (14.625, 0.00274), else to so many significant figures.
 * Figures before the decimal point are never rounded away.
 *
 * @param significant  figures kept; 4 unless told otherwise
 * @example numberText(9.25) // '9.25'
 * @example numberText(0.09176, 2) // '0.092'
 */
export function numberText(value: number, significant = 4): string {
  // Twelve figures drop what binary arithmetic leaves behind: 0.1 + 0.2 is 0.3 here.
  const clean = Number(value.toPrecision(12));
  const figures = Math.abs(clean)
    .toExponential()
    .replace(/e.*|\./g, '').length;
  if (figures <= Math.max(6, significant)) return plain(clean);
  const whole = Math.max(0, Math.floor(Math.log10(Math.abs(value))) + 1);
  return plain(Number(value.toPrecision(Math.min(17, Math.max(significant, whole)))));
}

function plain(value: number): string {
  return value === 0 ? '0' : String(value);
}
