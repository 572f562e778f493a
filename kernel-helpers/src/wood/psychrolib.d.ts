// The package ships no types; these are the functions used here (SI: °C, Pa).
declare module 'psychrolib' {
  const psychrolib: {
    SI: number;
    SetUnitSystem(units: number): void;
    GetSatVapPres(temperatureC: number): number;
    GetVapPresFromRelHum(temperatureC: number, relativeHumidity: number): number;
  };
  export default psychrolib;
}
