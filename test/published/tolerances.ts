/**
 * How near each quantity has to come to its published figures, and why so near. `mean` and `max` hold for the rows that are
 * not known misses. Tolerances state what the figures are good for; they are not to be widened to let a change through.
 */
export interface Tolerance {
  readonly mean: number;
  readonly max: number;
  readonly reason: string;
  /** What in the formula was chosen with these figures in view; null when nothing was. */
  readonly fitted: string | null;
  /** Which inputs or coefficients are from memory; null when all were read. */
  readonly memory: string | null;
}

const read = { fitted: null, memory: null } as const;

// biome-ignore format: one quantity to a line
export const TOLERANCES: Readonly<Record<string, Tolerance>> = {
  'saturation pressure': { mean: 2e-8, max: 5e-8, reason: 'the standard prints nine digits; half of the last one', ...read },
  'saturation temperature': { mean: 5e-7, max: 5e-7, reason: 'the standard prints nine digits; half of the last one', ...read },
  'jelly temperature by altitude': { mean: 0.4, max: 0.7, reason: 'printed in whole °F along a rule of about 2 °F per 1000 ft', fitted: 'the 30 % of inverted sugar meets the 8 °F rule at sea level: only the slope is tested', memory: null },
  'boiling point elevation, sucrose': { mean: 0.15, max: 0.4, reason: 'four sources differ by up to 0.4 K at 60-65 °Bx', fitted: null, memory: 'one of the four tables' },
  'boiling point elevation, readings of 1912': { mean: 0.2, max: 0.4, reason: 'as for sucrose; the old readings leave the others from 66 °Bx up', ...read },
  'boiling point elevation, jam': { mean: 0.1, max: 0.1, reason: 'a thermometer is read to 0.1 K', fitted: 'the composition was chosen to meet the 8 °F rule', memory: null },
  'freezing point': { mean: 0.03, max: 0.07, reason: 'handbook values to 0.01 K; k of fructose taken equal to glucose', fitted: null, memory: 'k of glucose and fructose' },
  'density at 20 °C': { mean: 0.2, max: 0.6, reason: 'two independent fits of the same measurements differ by this', ...read },
  'water activity': { mean: 0.002, max: 0.005, reason: 'half of the 0.01 the model is trusted to', fitted: null, memory: 'the molal table' },
  'pH of a buffer': { mean: 0.08, max: 0.11, reason: 'buffers are made by volume; a meter reads to 0.1', fitted: null, memory: 'the tartrate standard; pKa of phosphoric acid' },
  'pH of lemon juice': { mean: 0, max: 0, reason: 'the published range', ...read },
  'mass balance': { mean: 0.06, max: 0.06, reason: 'printed to 0.1 kg', ...read },
  'jar yield': { mean: 0.3, max: 0.5, reason: 'half a jar: recipes print whole jars and no °Bx', fitted: null, memory: 'household weights; the °Bx and the boil-off are estimates' },
  'evaporation power': { mean: 0.005, max: 0.005, reason: 'printed to 0.01 kW', fitted: null, memory: 'heat of evaporation' },
  'evaporation flux': { mean: 1, max: 1, reason: 'two trades give 40.7 and 43', fitted: 'the foam limit was set from this figure', memory: null },
  'pH without a meter': { mean: 0.3, max: 0.3, reason: 'root mean square of 24 fruits: for flavour and gel only', fitted: null, memory: 'acid shares' },
  'pH change on acid addition': { mean: 0.03, max: 0.03, reason: 'start values are assumed; -0.09 to -0.15 over acidity 5-8 g/L', ...read },
  'acid equivalence': { mean: 0.005, max: 0.005, reason: 'printed to 0.01 g/L', ...read },
  'pH after a tested dose': { mean: 0, max: 0, reason: 'the limit itself: 4.6 or below', fitted: null, memory: 'start values are assumed' },
  'heat capacity': { mean: 0.03, max: 0.03, reason: 'mixing rule at room temperature', ...read },
  'pectin share': { mean: 0, max: 0, reason: 'the published range of use', ...read },
  'pectin dose': { mean: 12, max: 12, reason: 'a fifth of the dose; the pH of the recipe is assumed and the pectin of its fruit ignored', fitted: 'the acidity factor is fitted to the strength series quoted beside it', memory: null },
  'highest gelling pH': { mean: 0.05, max: 0.05, reason: 'a band printed to 0.1', fitted: null, memory: 'the value at 65 %' },
  'sugar carried by own pectin': { mean: 0.2, max: 0.25, reason: 'cups against kilograms, means over a class', fitted: null, memory: 'most pectin contents; 0.75 drawn out and grade 130 are estimates' },
};

export interface KnownMiss {
  /** Computed less published (or less the nearer end of the range). */
  readonly residue: number;
  readonly why: string;
}

const disagree = 'published tables differ by 2 K from 66 °Bx up; the model follows the lower ones';

/** Rows the program misses. They stay in the table, and a residue that moves is an error. */
export const KNOWN_MISSES: Readonly<Record<string, KnownMiss>> = {
  S23: {
    residue: 1.02,
    why: 'at 85 °Bx the model lies above this table (from memory) and inside the candy-stage range',
  },
  S26: { residue: -1.51, why: disagree },
  S29: { residue: -0.8, why: disagree },
  S30: { residue: -1.51, why: disagree },
  S31: { residue: -2.07, why: disagree },
  S32: { residue: -2.54, why: disagree },
  S66: { residue: -0.68, why: 'printed six half-pints; the balance fills 5.3' },
  S68: {
    residue: -0.6,
    why: 'the older text prints six-ounce glasses for the same recipe, which agrees; the table was not rescaled',
  },
  S74: { residue: 0.7, why: 'a textbook quadratic, flat at its upper end' },
  S75: { residue: -0.54, why: disagree },
  S81: {
    residue: 0.08,
    why: 'figs above about pH 5: the tested dose does not bring the model to 4.6, so a meter reading is asked for',
  },
  S82: {
    residue: 0.72,
    why: 'figs above about pH 5: the tested dose does not bring the model to 4.6, so a meter reading is asked for',
  },
  S85: { residue: -0.29, why: 'the mixing rule is 8 % low at 100 °C; the polynomial is used for cooking' },
};
