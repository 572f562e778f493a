/** Every tape fraction to 1/64 under 100 in has at most eight figures, and is shown in full. */
const shortFigures = 8;

/**
 * A number as it is shown: in full where that is short (14.625, 0.00274), else to so many significant figures,
 * last zeros kept (11.0).
 * Figures before the decimal point are never rounded away.
 *
 * @param significant  figures kept; 4 unless told otherwise
 * @example numberText(9.25) // '9.25'
 * @example numberText(10.98765, 3) // '11.0'
 */
export function numberText(value: number, significant = 4): string {
  // Twelve figures drop what binary arithmetic leaves behind: 0.1 + 0.2 is 0.3 here.
  const clean = Number(value.toPrecision(12));
  const figures = Math.abs(clean)
    .toExponential()
    .replace(/e.*|\./g, '').length;
  if (figures <= Math.max(shortFigures, significant)) return clean === 0 ? '0' : String(clean);
  const whole = Math.max(0, Math.floor(Math.log10(Math.abs(value))) + 1);
  return value.toPrecision(Math.min(17, Math.max(significant, whole)));
}
