/**
 * Diffusivity across the grain at one specific gravity and temperature, compiled by hand for loops that run it
 * thousands of times. Same expressions as `diffusivityFormula` and its parts; a property test holds them together.
 * Past the formulas' range (0 to 30 % moisture) the end value is kept.
 *
 * @param scale  what m²/s is multiplied by
 * @returns diffusivity at a moisture content (%)
 * @internal
 */
export function diffusivityAt(specificGravity: number, temperatureC: number, scale = 1): (moisture: number) => number {
  const gasTimesKelvin = 1.987 * (temperatureC + 273.15);
  const dry = scale * 7e-6 * Math.exp(-9200 / gasTimesKelvin);
  const rise = 70 / gasTimesKelvin;
  return (given) => {
    const moisture = Math.min(Math.max(given, 0), 30);
    const wall = specificGravity * (0.667 + 0.01 * moisture);
    const lumen = Math.sqrt(1 - wall);
    return (dry * Math.exp(rise * moisture)) / ((1 - lumen) * wall);
  };
}
