/**
 * How near the program comes to published figures, one line a quantity: mean and worst distance over its rows, to two digits.
 * Computed by this program over its table of published checks; a test computes them again, so a line here cannot go stale.
 */
export interface AccuracyLine {
  readonly quantity: string;
  readonly rows: number;
  readonly mean: number;
  readonly worst: number;
  readonly unit: string;
  /** Rows the program is known to miss. They stay in mean and worst. */
  readonly misses: number;
  /** What was chosen with these very figures in view; null when nothing was. */
  readonly fitted: string | null;
  /** What in it is from memory of a publication; null when all was read. */
  readonly memory: string | null;
}

// biome-ignore format: one quantity to a line
export const ACCURACY: readonly AccuracyLine[] = [
  { quantity: 'saturation pressure', rows: 3, mean: 8.5e-9, worst: 2.2e-8, unit: 'MPa', misses: 0, fitted: null, memory: null },
  { quantity: 'saturation temperature', rows: 3, mean: 2.6e-7, worst: 3.9e-7, unit: 'K', misses: 0, fitted: null, memory: null },
  { quantity: 'jelly temperature by altitude', rows: 6, mean: 0.26, worst: 0.62, unit: '°F', misses: 0, fitted: 'the 30 % of inverted sugar meets the 8 °F rule at sea level: only the slope is tested', memory: null },
  { quantity: 'boiling point elevation, sucrose', rows: 19, mean: 0.27, worst: 1.5, unit: 'K', misses: 4, fitted: null, memory: '11 of 19 rows; one of the four tables' },
  { quantity: 'boiling point elevation, readings of 1912', rows: 6, mean: 1.2, worst: 2.5, unit: 'K', misses: 4, fitted: null, memory: null },
  { quantity: 'boiling point elevation, jam', rows: 1, mean: 0.042, worst: 0.042, unit: 'K', misses: 0, fitted: 'the composition was chosen to meet the 8 °F rule', memory: null },
  { quantity: 'freezing point', rows: 9, mean: 0.019, worst: 0.058, unit: '°C', misses: 0, fitted: null, memory: 'k of glucose and fructose' },
  { quantity: 'density at 20 °C', rows: 6, mean: 0.13, worst: 0.5, unit: 'kg/m³', misses: 0, fitted: null, memory: null },
  { quantity: 'water activity', rows: 7, mean: 0.0016, worst: 0.0039, unit: '1', misses: 0, fitted: null, memory: '6 of 7 rows; the molal table' },
  { quantity: 'pH of a buffer', rows: 6, mean: 0.062, worst: 0.1, unit: 'pH', misses: 0, fitted: null, memory: '1 of 6 rows; the tartrate standard; pKa of phosphoric acid' },
  { quantity: 'pH of lemon juice', rows: 1, mean: 0, worst: 0, unit: 'pH', misses: 0, fitted: null, memory: null },
  { quantity: 'mass balance', rows: 1, mean: 0.054, worst: 0.054, unit: 'kg', misses: 0, fitted: null, memory: null },
  { quantity: 'jar yield', rows: 5, mean: 0.37, worst: 0.68, unit: 'half-pints of 236.6 mL', misses: 2, fitted: null, memory: 'household weights; the °Bx and the boil-off are estimates' },
  { quantity: 'evaporation power', rows: 1, mean: 0.0017, worst: 0.0017, unit: 'kW', misses: 0, fitted: null, memory: 'heat of evaporation' },
  { quantity: 'evaporation flux', rows: 1, mean: 0.7, worst: 0.7, unit: 'kg/(m² h)', misses: 0, fitted: 'the foam limit was set from this figure', memory: null },
  { quantity: 'pH without a meter', rows: 1, mean: 0.26, worst: 0.26, unit: 'pH', misses: 0, fitted: null, memory: 'acid shares' },
  { quantity: 'pH change on acid addition', rows: 1, mean: 0.023, worst: 0.023, unit: 'pH', misses: 0, fitted: null, memory: null },
  { quantity: 'acid equivalence', rows: 1, mean: 0.0018, worst: 0.0018, unit: 'g/L', misses: 0, fitted: null, memory: null },
  { quantity: 'pH after a tested dose', rows: 4, mean: 0.2, worst: 0.72, unit: 'pH', misses: 2, fitted: null, memory: 'start values are assumed' },
  { quantity: 'heat capacity', rows: 3, mean: 0.11, worst: 0.29, unit: 'kJ/(kg K)', misses: 1, fitted: null, memory: null },
  { quantity: 'pectin share', rows: 1, mean: 0, worst: 0, unit: '% of jam', misses: 0, fitted: null, memory: null },
  { quantity: 'pectin dose', rows: 1, mean: 6.5, worst: 6.5, unit: 'g', misses: 0, fitted: 'the acidity factor is fitted to the strength series quoted beside it', memory: null },
  { quantity: 'highest gelling pH', rows: 1, mean: 0.04, worst: 0.04, unit: 'pH', misses: 0, fitted: null, memory: 'the value at 65 %' },
  { quantity: 'sugar carried by own pectin', rows: 3, mean: 0.17, worst: 0.24, unit: 'kg/kg', misses: 0, fitted: null, memory: 'most pectin contents; 0.75 drawn out and grade 130 are estimates' },
];
