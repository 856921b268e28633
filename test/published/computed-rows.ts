/** What the program computes for each quantity of the published rows: only calls into lib/science and unit factors. */
import { FRUITS } from '#lib/reference/fruits.ts';
import { acidEquivalents, addAcid, fitAcidity, moleShares, phOf } from '#lib/science/acid-balance.ts';
import { acidAs, type EQUIVALENT_MASS } from '#lib/science/acid-constants.ts';
import { solvePh } from '#lib/science/charge-balance.ts';
import { type Composition, syrup } from '#lib/science/composition.ts';
import { sucroseDensity } from '#lib/science/density.ts';
import { freezingPoint } from '#lib/science/freezing-point.ts';
import { highestGellingPh } from '#lib/science/gel-factors.ts';
import { drySucroseHeatCapacity, mixedHeatCapacity, SOLIDS_HEAT_CAPACITY } from '#lib/science/heat-capacity.ts';
import { massBalance } from '#lib/science/mass-balance.ts';
import { boilOffGPerMin, FOAM_LIMIT_KG_PER_M2_H } from '#lib/science/net-power.ts';
import { pectinNeed, STANDARD_GRADE } from '#lib/science/pectin-need.ts';
import { pectinSupply } from '#lib/science/pectin-supply.ts';
import { MOLAR_MASS } from '#lib/science/physical-constants.ts';
import { predictedPh } from '#lib/science/predicted-ph.ts';
import { saturationPressure, saturationTemperature } from '#lib/science/saturation.ts';
import { boilingPoint, boilingPointElevation } from '#lib/science/solution-boiling-point.ts';
import { standardPressure } from '#lib/science/standard-pressure.ts';
import { waterActivity } from '#lib/science/water-activity.ts';
import { fahrenheit, GRAMS_PER_POUND, METRES_PER_FOOT } from '#lib/units/convert.ts';
import { celsius, pascal } from '#lib/units/quantity.ts';
import { acidsIn, type CheckRow, type FruitPhRow, numberIn, numberOr, SCIENCE_CHECKS } from './science-checks.ts';

const KELVIN = 273.15;

const elevation = (row: CheckRow): number =>
  boilingPointElevation(
    syrup(numberIn(row, 'degBx'), numberIn(row, 'inverted_share')),
    pascal(numberIn(row, 'pressure_Pa')),
  );

function singleSugar(solute: string, pct: number): Composition {
  return { water: 100 - pct, sucrose: 0, glucose: 0, fructose: 0, [solute]: pct };
}

function jamElevation(row: CheckRow): number {
  const g = row.inputs.g as Composition;
  const pan = { ...g, ionsMmol: numberIn(row, 'ions_mmol'), polymer: numberIn(row, 'polymer_g') };
  return boilingPointElevation(pan, pascal(numberIn(row, 'pressure_Pa')));
}

function jellyFahrenheit(row: CheckRow): number {
  const p = standardPressure(numberIn(row, 'altitude_ft') * METRES_PER_FOOT);
  return fahrenheit(boilingPoint(syrup(numberIn(row, 'degBx'), numberIn(row, 'inverted_share')), p));
}

function activity(row: CheckRow): number {
  const t = celsius(numberIn(row, 't_C'));
  if ('degBx' in row.inputs) return waterActivity(syrup(numberIn(row, 'degBx'), 0), t);
  const sucrose = numberIn(row, 'sucrose_mol_per_kg_water') * MOLAR_MASS.sucrose;
  return waterActivity({ water: 1000, sucrose, glucose: 0, fructose: 0 }, t);
}

/** Half-pints of 236.6 mL; household weights and assumptions stand in the row or here (estimates). */
function halfPints(row: CheckRow): number {
  const CUP_ML = 236.6;
  const has = (key: string): number => numberOr(row, key, 0);
  const juiceG = has('juice_cups') * CUP_ML * (sucroseDensity(numberOr(row, 'juice_degBx', 9), celsius(20)) / 1000);
  const inputs = [
    { grams: juiceG, solublePct: has('juice_degBx') },
    { grams: has('crushed_fruit_g'), solublePct: has('fruit_degBx') },
    { grams: has('sugar_g'), solublePct: 100 },
    { grams: has('liquid_pectin_g'), solublePct: 0 },
    { grams: has('pectin_box_g'), solublePct: 90 },
  ];
  const target = numberOr(row, 'target_degBx', 65);
  const { panTargetG, chargeG, solidsG } = massBalance({ inputs, targetBrix: target });
  const outG = 'boil_off' in row.inputs ? chargeG * (1 - numberIn(row, 'boil_off')) : panTargetG;
  const brix = (100 * solidsG) / outG;
  return outG / (sucroseDensity(brix, celsius(20)) / 1000) / CUP_ML;
}

/** pH from acidity and minerals of one fruit of the table. */
export const unmeteredPh = (row: FruitPhRow): number => {
  const massShares = Object.entries(row.acidMassShares) as [keyof typeof EQUIVALENT_MASS, number][];
  const taEqPerKg = massShares.reduce((sum, [acid, share]) => sum + acidEquivalents(row.taPct * share, acid), 0);
  return predictedPh({ ...row, taEqPerKg, shares: moleShares(row.acidMassShares) });
};

function unmeteredRms(): number {
  const errors = SCIENCE_CHECKS.pH24.rows.map((fruit) => unmeteredPh(fruit) - fruit.pH);
  return Math.sqrt(errors.reduce((sum, e) => sum + e * e, 0) / errors.length);
}

function mustShift(row: CheckRow): number {
  const state = fitAcidity({
    taPct: numberIn(row, 'TA_g_per_L_as_tartaric') / 10,
    as: 'tartaric',
    pH: numberIn(row, 'start_pH'),
    shares: moleShares(acidsIn(row, 'acid_mass_shares')),
    waterPct: numberIn(row, 'water_kg_per_L') * 100,
  });
  const tartaricG = acidsIn(row, 'add_g_per_L').tartaric ?? Number.NaN;
  return addAcid(state, { tartaricG }).pH - phOf(state);
}

function dosedPh(row: CheckRow): number {
  const state = fitAcidity({
    taPct: numberIn(row, 'TA_pct_as_citric'),
    as: 'citric',
    pH: numberIn(row, 'start_pH'),
    shares: acidsIn(row, 'acid_mole_shares'),
    waterPct: numberIn(row, 'water_pct'),
  });
  return addAcid(state, { lemonJuiceG: numberIn(row, 'lemon_g_per_kg') }).pH;
}

/** Per cent of the jam, or grams of the pectin's own grade. */
function pectinDose(row: CheckRow): number {
  const solidsPct = numberIn(row, 'solids_pct');
  const sugarTotalG = numberOr(row, 'sugar_g', solidsPct);
  const best = highestGellingPh(solidsPct) - 1;
  const need = pectinNeed({ sugarTotalG, solidsPct, pH: numberOr(row, 'pH', best), boiledMin: 0, kind: 'HM' });
  if (!need.sets) throw new Error(need.reason);
  return (need.eq150G * STANDARD_GRADE) / numberIn(row, 'grade');
}

/** Mean kg of sugar a kg of fruit carries over a set class: own pectin × 0.75 drawn out × grade 130, less its own sugar. */
function selfSet(row: CheckRow): number {
  const fruits = FRUITS.filter((fruit) => fruit.setClass === row.inputs.set_class);
  const carried = fruits.map(({ id, solublePct }) => {
    const juice = pectinSupply([{ kind: 'fruit', fruitId: id, grams: 1000, drawnOut: 0.75 }]);
    return (juice.eq150G * STANDARD_GRADE) / 1000 - solublePct.typ / 100;
  });
  return carried.reduce((sum, x) => sum + x, 0) / carried.length;
}

const buffer = (row: CheckRow): number => solvePh(acidsIn(row, 'acid_mol_per_kg'), numberIn(row, 'cation_eq_per_kg'));

const heat = (row: CheckRow): number => {
  if (row.what.startsWith('dry sucrose')) return SOLIDS_HEAT_CAPACITY;
  const brix = numberIn(row, 'degBx');
  return mixedHeatCapacity(1000 - 10 * brix, 10 * brix);
};

export const COMPUTED: Readonly<Record<string, (row: CheckRow) => number>> = {
  'saturation pressure': (row) => saturationPressure(celsius(numberIn(row, 'T_K') - KELVIN)) / 1e6,
  'saturation temperature': (row) => saturationTemperature(pascal(numberIn(row, 'p_MPa') * 1e6)) + KELVIN,
  'jelly temperature by altitude': jellyFahrenheit,
  'boiling point elevation, sucrose': elevation,
  'boiling point elevation, readings of 1912': elevation,
  'boiling point elevation, jam': jamElevation,
  'freezing point': (row) => freezingPoint(singleSugar(String(row.inputs.solute), numberIn(row, 'mass_pct'))),
  'density at 20 °C': (row) => sucroseDensity(numberIn(row, 'degBx'), celsius(numberIn(row, 't_C'))),
  'water activity': activity,
  'pH of a buffer': buffer,
  'pH of lemon juice': buffer,
  'mass balance': (row) =>
    massBalance({
      inputs: [{ grams: numberIn(row, 'solids_kg') * 1000, solublePct: 100 }],
      targetBrix: numberIn(row, 'target_degBx'),
    }).panTargetG / 1000,
  'jar yield': halfPints,
  'evaporation power': (row) => (numberIn(row, 'lb_water') * GRAMS_PER_POUND) / 60 / boilOffGPerMin(1),
  'evaporation flux': () => FOAM_LIMIT_KG_PER_M2_H,
  'pH without a meter': unmeteredRms,
  'pH change on acid addition': mustShift,
  'acid equivalence': (row) => acidAs(numberIn(row, 'citric_g_per_L'), 'citric', 'tartaric'),
  'pH after a tested dose': dosedPh,
  'heat capacity': heat,
  'pectin share': pectinDose,
  'pectin dose': pectinDose,
  'highest gelling pH': (row) => highestGellingPh(numberIn(row, 'solids_pct')),
  'sugar carried by own pectin': selfSet,
};

/** The Mohos handbook line the dry-sucrose row prints, for the test that it is the figure quoted. */
export const drySucroseAt60 = (): number => drySucroseHeatCapacity(celsius(60));
