/**
 * Pressure-canner minutes for acid fruit, as printed (AIB 539 and extension sheets, 15 rows). The minutes are the same at
 * every altitude; the gauge pressure is not (pressure-times). Low-acid food is outside this program.
 */
import type { JarSize } from './jar-sizes.ts';
import type { ProcessProduct } from './process-products.ts';
import type { Cited } from './source.ts';

export interface PrintedPressureRow extends Cited {
  readonly products: readonly ProcessProduct[];
  readonly packs: readonly ('hot' | 'raw')[];
  readonly jars: readonly JarSize[];
  readonly minutes: number;
}

// biome-ignore format: one printed row to a line
export const PRESSURE_TABLE = [
  { products: ['applesauce'], packs: ['hot'], jars: ['pint'], minutes: 8, source: 'MSU_APPLESAUCE', status: 'verified' },
  { products: ['applesauce'], packs: ['hot'], jars: ['quart'], minutes: 10, source: 'MSU_APPLESAUCE', status: 'verified' },
  { products: ['apples-sliced'], packs: ['hot'], jars: ['pint', 'quart'], minutes: 8, source: 'AIB_APPLESLICE', status: 'verified' },
  { products: ['berries-whole'], packs: ['hot'], jars: ['pint', 'quart'], minutes: 8, source: 'EDIS_PLUM', status: 'verified' },
  { products: ['berries-whole'], packs: ['raw'], jars: ['pint'], minutes: 8, source: 'MSU_BERRIES', status: 'verified' },
  { products: ['berries-whole'], packs: ['raw'], jars: ['quart'], minutes: 10, source: 'MSU_BERRIES', status: 'verified' },
  { products: ['cherries-sweet-or-sour'], packs: ['hot'], jars: ['pint'], minutes: 8, source: 'MSU_CHERRY', status: 'verified' },
  { products: ['cherries-sweet-or-sour'], packs: ['hot'], jars: ['quart'], minutes: 10, source: 'MSU_CHERRY', status: 'verified' },
  { products: ['cherries-sweet-or-sour'], packs: ['raw'], jars: ['pint', 'quart'], minutes: 10, source: 'MSU_CHERRY', status: 'verified' },
  { products: ['fruit-puree'], packs: ['hot'], jars: ['pint', 'quart'], minutes: 8, source: 'NCHFP_PUREE', status: 'verified' },
  { products: ['citrus-sections-grapefruit-orange'], packs: ['hot'], jars: ['pint', 'quart'], minutes: 8, source: 'MSU_CITRUS', status: 'verified' },
  { products: ['peaches-yellow-flesh', 'nectarines-yellow-flesh', 'apricots'], packs: ['hot', 'raw'], jars: ['pint', 'quart'], minutes: 10, source: 'AIB_PEACH', status: 'verified' },
  { products: ['pears'], packs: ['hot'], jars: ['pint', 'quart'], minutes: 10, source: 'AIB_PEAR', status: 'verified' },
  { products: ['plums'], packs: ['hot', 'raw'], jars: ['pint', 'quart'], minutes: 10, source: 'MSU_PLUM', status: 'verified' },
  { products: ['rhubarb-stewed'], packs: ['hot'], jars: ['pint', 'quart'], minutes: 8, source: 'MSU_RHUBARB', status: 'verified' },
] as const satisfies readonly PrintedPressureRow[];
