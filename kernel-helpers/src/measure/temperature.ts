/**
 * Degrees Fahrenheit on the Celsius scale.
 *
 *   C = (F - 32) 5/9          by definition
 *
 * @example celsius(68) // 20
 */
export function celsius(fahrenheit: number): number {
  return ((fahrenheit - 32) * 5) / 9;
}

/**
 * Degrees Celsius on the Fahrenheit scale.
 *
 *   F = C 9/5 + 32            by definition
 *
 * @example fahrenheit(20) // 68
 */
export function fahrenheit(celsius: number): number {
  return (celsius * 9) / 5 + 32;
}
