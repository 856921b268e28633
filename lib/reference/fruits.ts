/**
 * A fruit, whole: the rows of the fruit tables joined under one id. 67 fruits.
 * Percentages are by weight of the fresh edible part, except `wastePct` (of fruit as bought).
 */
import { FRUIT_ACIDITY, type FruitAcidityRow } from './fruit-acidity.ts';
import { FRUIT_IONS, type FruitIonsRow } from './fruit-ions.ts';
import { FRUIT_LIST, type FruitId } from './fruit-list.ts';
import { FRUIT_PECTIN, type FruitPectinRow } from './fruit-pectin.ts';
import { FRUIT_SOLIDS, type FruitSolidsRow } from './fruit-solids.ts';
import type { Cited } from './source.ts';

export interface Fruit {
  readonly id: FruitId;
  readonly name: string;
  readonly waterPct: number;
  /** Degrees Brix. */
  readonly solublePct: { readonly low: number; readonly typ: number; readonly high: number };
  readonly sugarsPct: number | null;
  readonly insolublePct: number | null;
  /** Titratable acidity as `acidAs`. */
  readonly acidPct: { readonly low: number; readonly typ: number; readonly high: number };
  readonly acidAs: 'citric' | 'malic' | 'tartaric';
  /** The widest range found; a predicted pH never unlocks anything. */
  readonly pH: { readonly low: number; readonly high: number };
  /** As calcium pectate. */
  readonly pectinPct: { readonly low: number; readonly ripe: number; readonly high: number };
  readonly wastePct: number;
  readonly wasteParts: string;
  readonly setClass: string;
  /** By the highest pH: A to 4.1, B to 4.6, C above. */
  readonly acidClass: 'A' | 'B' | 'C';
  /** True when the pH range is from memory: a provisional A counts as B until the range is sourced. */
  readonly acidProvisional: boolean;
  /** Id of a row of low-acid-rules, which overrides the class; null when none applies. */
  readonly lowAcidRule: string | null;
  readonly labelGroup: 'I' | 'II' | null;
  readonly ions: FruitIonsRow;
  readonly status: Readonly<Record<'water' | 'soluble' | 'acid' | 'pH' | 'pectin' | 'waste', Cited>>;
}

export const FRUITS: readonly Fruit[] = FRUIT_LIST.map((row): Fruit => {
  const solids: FruitSolidsRow = FRUIT_SOLIDS[row.id];
  const acidity: FruitAcidityRow = FRUIT_ACIDITY[row.id];
  const pectin: FruitPectinRow = FRUIT_PECTIN[row.id];
  return {
    ...row,
    waterPct: solids.water,
    solublePct: { low: solids.soluble[0], typ: solids.soluble[1], high: solids.soluble[2] },
    sugarsPct: solids.sugars,
    insolublePct: solids.insoluble,
    acidPct: { low: acidity.acid[0], typ: acidity.acid[1], high: acidity.acid[2] },
    acidAs: acidity.as,
    pH: { low: acidity.pH[0], high: acidity.pH[1] },
    pectinPct: { low: pectin.pectin[0], ripe: pectin.pectin[1], high: pectin.pectin[2] },
    wastePct: pectin.waste,
    wasteParts: pectin.parts,
    ions: FRUIT_IONS[row.id],
    status: {
      water: solids.waterFrom,
      soluble: solids.solubleFrom,
      acid: acidity.acidFrom,
      pH: acidity.phFrom,
      pectin: pectin.pectinFrom,
      waste: pectin.wasteFrom,
    },
  };
});

const BY_ID: ReadonlyMap<string, Fruit> = new Map(FRUITS.map((fruit) => [fruit.id, fruit]));

/** The fruit of an id. RangeError when there is none: a fruit is never guessed from its name. */
export function fruitOf(id: string): Fruit {
  const fruit = BY_ID.get(id);
  if (!fruit) throw new RangeError(`"${id}" is not a fruit of the table`);
  return fruit;
}
