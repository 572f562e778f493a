// The package ships no types; these are the functions used here (SI: °C, Pa, m).
declare module 'psychrolib' {
  const psychrolib: {
    SI: number;
    SetUnitSystem(units: number): void;
    GetSatVapPres(temperatureC: number): number;
    GetStandardAtmPressure(altitudeM: number): number;
    GetTDewPointFromRelHum(temperatureC: number, relativeHumidity: number): number;
    GetTWetBulbFromRelHum(temperatureC: number, relativeHumidity: number, pressure: number): number;
    GetHumRatioFromTWetBulb(temperatureC: number, wetBulbC: number, pressure: number): number;
    GetRelHumFromHumRatio(temperatureC: number, humidityRatio: number, pressure: number): number;
  };
  export default psychrolib;
}
