// The package ships no types; these are the functions used here (SI: °C, Pa, m).
declare module 'psychrolib' {
  const psychrolib: {
    SI: number;
    SetUnitSystem(units: number): void;
    GetSatVapPres(temperatureC: number): number;
    GetTDewPointFromRelHum(temperatureC: number, relativeHumidity: number): number;
  };
  export default psychrolib;
}
