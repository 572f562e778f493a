/**
 * The sorption equation at one temperature, compiled by hand for loops that run it thousands of times. Same constants
 * as {@link emcFormula}; a property test holds the two together over the whole range.
 *
 * @internal
 */
export class Sorption {
  private readonly scale: number;
  private readonly dissolved: number;
  private readonly first: number;
  private readonly both: number;

  /** @param temperatureC  -40 to 100 °C */
  constructor(temperatureC: number) {
    const t = temperatureC;
    this.scale = 1800 / (349 + 1.29 * t + 0.0135 * t * t);
    this.dissolved = 0.805 + 0.000736 * t - 0.00000273 * t * t;
    this.first = 6.27 - 0.00938 * t - 0.000303 * t * t;
    this.both = this.first * (1.91 + 0.0407 * t - 0.000293 * t * t);
  }

  /** Moisture content (%) at a relative humidity (0 to 1). */
  moisture(humidity: number): number {
    const x = this.dissolved * humidity;
    const bound = this.first * x;
    const twice = this.both * x * x;
    return this.scale * (x / (1 - x) + (bound + 2 * twice) / (1 + bound + twice));
  }
}
