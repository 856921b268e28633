/**
 * Densities, kg/m³. Water: Kell's form as used with the ICUMSA sucrose polynomial (read in three public source files).
 * Sucrose: ICUMSA polynomial (read in two), within 0.6 kg/m³ of the CRC Handbook at 20 °C; stated for 0-85 °C, used to 100 °C.
 */
import type { Celsius } from '#lib/units/quantity.ts';
import { brixOf, type Composition, massOf } from './composition.ts';

// biome-ignore format: one row of the polynomial to a line
const SUCROSE: readonly (readonly number[])[] = [
  [385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.289],
  [-46.272, -7.172, 1.1597, 5.1126, 17.5254],
  [59.7712, 7.2491, 12.363, -35.4791],
  [-47.2207, -21.6977, 27.6301],
  [18.3184, 12.3081],
];
/** Pulp and pips: an estimate; for 1-2 % of fibre it moves a jam by less than 0.5 %. */
const INSOLUBLE_KG_PER_M3 = 1500;

/** Pure water, 0 to 100 °C. */
export function waterDensity(t: Celsius): number {
  if (!(t >= 0 && t <= 101)) throw new RangeError(`the density of water is used from 0 to 100 °C, not ${t} °C`);
  const top =
    999.83952 + t * (16.952577 + t * (-7.9905127e-3 + t * (-46.241757e-6 + t * (105.84601e-9 - t * 281.03006e-12))));
  return top / (1 + 16.887236e-3 * t);
}

/** Sugar solution, 0 to 85 °Bx, 0 to 100 °C. RangeError outside. */
export function sucroseDensity(brix: number, t: Celsius): number {
  if (!(brix >= 0 && brix <= 85)) throw new RangeError(`the density of syrup is used from 0 to 85 °Bx, not ${brix}`);
  const w = brix / 100;
  const hot = (t - 20) / 100;
  return SUCROSE.reduce(
    (sum, row, j) => sum + hot ** j * row.reduce((part, c, i) => part + c * w ** (i + 1), 0),
    waterDensity(t),
  );
}

/** Jam or puree: syrup with its pulp; `airShare` of the volume is trapped air (1-3 % in a ladled jam, an estimate). */
export function jamDensity(c: Composition, t: Celsius, airShare = 0): number {
  const pulp = (c.insoluble ?? 0) / massOf(c);
  const solid = 1 / ((1 - pulp) / sucroseDensity(brixOf(c), t) + pulp / INSOLUBLE_KG_PER_M3);
  return solid * (1 - airShare);
}
