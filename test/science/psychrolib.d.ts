/** The part of psychrolib 1.1.1 (MIT, ASHRAE relations) that the tests use as a second opinion; it ships no types. */
declare module 'psychrolib' {
  const psychrolib: {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    GetStandardAtmPressure(altitudeM: number): number;
    GetSatVapPres(dryBulbC: number): number;
    GetHumRatioFromRelHum(dryBulbC: number, humidity: number, pressurePa: number): number;
    GetRelHumFromHumRatio(dryBulbC: number, humidityRatio: number, pressurePa: number): number;
  };
  export default psychrolib;
}
