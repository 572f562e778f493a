import type { Climate } from '../place/climates.js';
import { saturationPressure } from './psychrometrics.js';

/** Mean air of one month outdoors. */
export interface OutdoorMonth {
  /** 1 to 12. */
  month: number;
  temperatureC: number;
  /** 0 to 1. */
  relativeHumidity: number;
}

/** A place's air outdoors, month by month; from its dew point where that is known. @internal */
export function outdoorsOf({ temperatureC, relativeHumidityPercent, dewPointC }: Climate): OutdoorMonth[] {
  return temperatureC.map((outdoorC, index) => {
    const dewPoint = dewPointC?.[index];
    const relativeHumidity =
      dewPoint === undefined
        ? (relativeHumidityPercent[index] as number) / 100
        : Math.min(saturationPressure(dewPoint) / saturationPressure(outdoorC), 1);
    return { month: index + 1, temperatureC: outdoorC, relativeHumidity };
  });
}
