/**
 * Boiling-water process minutes, as printed: USDA Complete Guide to Home Canning (AIB 539, 1994 text, revision 2015) and
 * the extension sheets that reprint it. Minutes from a full boil; one figure per altitude band of the product
 * (process-products, altitude-bands). Some rows repeat a figure (15/20/20/25): they are used as printed, nothing is added.
 * Rows of status `memory` carry figures of AIB 539 whose page was not read again.
 */
import type { JarSize } from './jar-sizes.ts';
import type { ProcessProduct } from './process-products.ts';
import type { Cited } from './source.ts';

export interface PrintedProcessRow extends Cited {
  readonly product: ProcessProduct;
  readonly packs: readonly ('hot' | 'raw')[];
  readonly jars: readonly JarSize[];
  readonly minutes: readonly number[];
  /** Where the row names fewer fruits than the product. */
  readonly fruitIds?: readonly string[];
}

// biome-ignore format: one printed row to a line
export const PROCESS_TABLE = [
  { product: 'jam-or-preserve-no-added-pectin', packs: ['hot'], jars: ['half-pint', 'pint'], minutes: [5, 10, 15], source: 'MSU_JAM', status: 'verified', also: ['NCHFP_JAMNOPECTIN', 'HGB_BLACKBERRY'], note: 'no quart process published; 4 oz and 12 oz jars take the same row' },
  { product: 'jam-with-added-pectin', packs: ['hot'], jars: ['half-pint', 'pint'], minutes: [5, 10, 15], source: 'HGB_STRAWBERRY', status: 'verified', also: ['IL_STRAW'] },
  { product: 'jelly-with-or-without-added-pectin', packs: ['hot'], jars: ['half-pint', 'pint'], minutes: [5, 10, 15], source: 'MSU_GRAPEPLUM', status: 'verified', also: ['UNT_CRABAPPLE'] },
  { product: 'marmalade', packs: ['hot'], jars: ['half-pint', 'pint'], minutes: [5, 10, 15], source: 'CITRUSMARM', status: 'verified' },
  { product: 'conserve-incl-nuts', packs: ['hot'], jars: ['half-pint', 'pint'], minutes: [5, 10, 15], source: 'UNT_APRICOTORANGE', status: 'verified' },
  { product: 'fruit-butter-apple', packs: ['hot'], jars: ['half-pint', 'pint'], minutes: [5, 10, 15], source: 'AIB_APPLEBUTTER', status: 'verified' },
  { product: 'fruit-butter-apple', packs: ['hot'], jars: ['quart'], minutes: [10, 15, 20], source: 'AIB_APPLEBUTTER', status: 'verified' },
  { product: 'fruit-butter-other-acid-fruit', packs: ['hot'], jars: ['half-pint', 'pint'], minutes: [5, 10, 15], source: 'AIB539', status: 'memory', note: 'extension practice puts pear, peach, plum, apricot butters on the jam row; surer to use 10 min with clean jars' },
  { product: 'applesauce', packs: ['hot'], jars: ['pint'], minutes: [15, 20, 20, 25], source: 'MSU_APPLESAUCE', status: 'verified' },
  { product: 'applesauce', packs: ['hot'], jars: ['quart'], minutes: [20, 25, 30, 35], source: 'MSU_APPLESAUCE', status: 'verified' },
  { product: 'apples-sliced', packs: ['hot'], jars: ['pint', 'quart'], minutes: [20, 25, 30, 35], source: 'AIB_APPLESLICE', status: 'verified' },
  { product: 'apple-juice', packs: ['hot'], jars: ['pint', 'quart'], minutes: [5, 10, 15], source: 'MSU_APPLEJUICE', status: 'verified' },
  { product: 'apple-juice', packs: ['hot'], jars: ['half-gallon'], minutes: [10, 15, 20], source: 'MSU_APPLEJUICE', status: 'verified' },
  { product: 'grape-juice', packs: ['hot'], jars: ['pint', 'quart'], minutes: [5, 10, 15], source: 'AIB539', status: 'memory' },
  { product: 'grape-juice', packs: ['hot'], jars: ['half-gallon'], minutes: [10, 15, 20], source: 'AIB539', status: 'memory' },
  { product: 'berries-whole', packs: ['hot'], jars: ['pint', 'quart'], minutes: [15, 20, 20, 25], source: 'MSU_BERRIES', status: 'verified', fruitIds: ['blueberry', 'gooseberry', 'currant-red', 'currant-black'], note: 'hot pack: blueberry, currant, gooseberry, huckleberry. the printed list also names elderberry: overruled by low-acid-rules' },
  { product: 'berries-whole', packs: ['raw'], jars: ['pint'], minutes: [15, 20, 20, 25], source: 'MSU_BERRIES', status: 'verified', fruitIds: ['blackberry', 'loganberry', 'raspberry-red', 'raspberry-black', 'blueberry', 'gooseberry', 'currant-red', 'currant-black'] },
  { product: 'berries-whole', packs: ['raw'], jars: ['quart'], minutes: [20, 25, 30, 35], source: 'MSU_BERRIES', status: 'verified', fruitIds: ['blackberry', 'loganberry', 'raspberry-red', 'raspberry-black', 'blueberry', 'gooseberry', 'currant-red', 'currant-black'] },
  { product: 'berry-or-cherry-or-grape-syrup', packs: ['hot'], jars: ['half-pint', 'pint'], minutes: [10, 15, 20], source: 'MSU_BERRYSYRUP', status: 'verified' },
  { product: 'cherries-sweet-or-sour', packs: ['hot'], jars: ['pint'], minutes: [15, 20, 20, 25], source: 'MSU_CHERRY', status: 'verified' },
  { product: 'cherries-sweet-or-sour', packs: ['hot'], jars: ['quart'], minutes: [20, 25, 30, 35], source: 'MSU_CHERRY', status: 'verified' },
  { product: 'cherries-sweet-or-sour', packs: ['raw'], jars: ['pint', 'quart'], minutes: [25, 30, 35, 40], source: 'MSU_CHERRY', status: 'verified' },
  { product: 'cranberry-sauce', packs: ['hot'], jars: ['half-pint', 'pint'], minutes: [15, 20, 20, 25], source: 'NCHFP_CRANSAUCE', status: 'verified' },
  { product: 'peaches-yellow-flesh', packs: ['hot'], jars: ['pint'], minutes: [20, 25, 30, 35], source: 'AIB_PEACH', status: 'verified' },
  { product: 'peaches-yellow-flesh', packs: ['hot'], jars: ['quart'], minutes: [25, 30, 35, 40], source: 'AIB_PEACH', status: 'verified' },
  { product: 'peaches-yellow-flesh', packs: ['raw'], jars: ['pint'], minutes: [25, 30, 35, 40], source: 'AIB_PEACH', status: 'verified' },
  { product: 'peaches-yellow-flesh', packs: ['raw'], jars: ['quart'], minutes: [30, 35, 40, 45], source: 'AIB_PEACH', status: 'verified' },
  { product: 'nectarines-yellow-flesh', packs: ['hot'], jars: ['pint'], minutes: [20, 25, 30, 35], source: 'AIB_PEACH', status: 'verified' },
  { product: 'nectarines-yellow-flesh', packs: ['hot'], jars: ['quart'], minutes: [25, 30, 35, 40], source: 'AIB_PEACH', status: 'verified' },
  { product: 'nectarines-yellow-flesh', packs: ['raw'], jars: ['pint'], minutes: [25, 30, 35, 40], source: 'AIB_PEACH', status: 'verified' },
  { product: 'nectarines-yellow-flesh', packs: ['raw'], jars: ['quart'], minutes: [30, 35, 40, 45], source: 'AIB_PEACH', status: 'verified' },
  { product: 'apricots', packs: ['hot'], jars: ['pint'], minutes: [20, 25, 30, 35], source: 'AIB539', status: 'memory', also: ['OSU_CHART'], note: 'sea-level values seen in OSU_CHART; altitude columns from memory, same as peaches (sure)' },
  { product: 'apricots', packs: ['hot'], jars: ['quart'], minutes: [25, 30, 35, 40], source: 'AIB539', status: 'memory', also: ['OSU_CHART'], note: 'sea-level values seen in OSU_CHART; altitude columns from memory, same as peaches (sure)' },
  { product: 'apricots', packs: ['raw'], jars: ['pint'], minutes: [25, 30, 35, 40], source: 'AIB539', status: 'memory', also: ['OSU_CHART'], note: 'sea-level values seen in OSU_CHART; altitude columns from memory, same as peaches (sure)' },
  { product: 'apricots', packs: ['raw'], jars: ['quart'], minutes: [30, 35, 40, 45], source: 'AIB539', status: 'memory', also: ['OSU_CHART'], note: 'sea-level values seen in OSU_CHART; altitude columns from memory, same as peaches (sure)' },
  { product: 'pears', packs: ['hot'], jars: ['pint'], minutes: [20, 25, 30, 35], source: 'AIB_PEAR', status: 'verified', note: 'raw pack makes poor quality; no raw row' },
  { product: 'pears', packs: ['hot'], jars: ['quart'], minutes: [25, 30, 35, 40], source: 'AIB_PEAR', status: 'verified' },
  { product: 'asian-pears', packs: ['hot'], jars: ['pint'], minutes: [20, 25, 30, 35], source: 'NCHFP_ASIANPEAR', status: 'verified' },
  { product: 'asian-pears', packs: ['hot'], jars: ['quart'], minutes: [25, 30, 35, 40], source: 'NCHFP_ASIANPEAR', status: 'verified' },
  { product: 'plums', packs: ['hot', 'raw'], jars: ['pint'], minutes: [20, 25, 30, 35], source: 'MSU_PLUM', status: 'verified', also: ['EDIS_PLUM'] },
  { product: 'plums', packs: ['hot', 'raw'], jars: ['quart'], minutes: [25, 30, 35, 40], source: 'MSU_PLUM', status: 'verified', also: ['EDIS_PLUM'] },
  { product: 'grapes-whole', packs: ['hot'], jars: ['pint', 'quart'], minutes: [10, 15, 15, 20], source: 'UNL_GRAPE', status: 'verified' },
  { product: 'grapes-whole', packs: ['raw'], jars: ['pint'], minutes: [15, 20, 20, 25], source: 'UNL_GRAPE', status: 'verified' },
  { product: 'grapes-whole', packs: ['raw'], jars: ['quart'], minutes: [20, 25, 30, 35], source: 'UNL_GRAPE', status: 'verified' },
  { product: 'rhubarb-stewed', packs: ['hot'], jars: ['pint', 'quart'], minutes: [15, 20, 25], source: 'MSU_RHUBARB', status: 'verified' },
  { product: 'fruit-puree', packs: ['hot'], jars: ['pint', 'quart'], minutes: [15, 20, 25], source: 'NCHFP_PUREE', status: 'verified', note: 'not for banana, fig, Asian pear, tomato, melon, papaya, ripe mango, coconut (nor white peach, elderberry, pumpkin)' },
  { product: 'citrus-sections-grapefruit-orange', packs: ['raw'], jars: ['pint', 'quart'], minutes: [10, 15, 20], source: 'MSU_CITRUS', status: 'verified' },
  { product: 'figs', packs: ['hot'], jars: ['pint'], minutes: [45, 50, 55, 60], source: 'MSU_FIG', status: 'verified' },
  { product: 'figs', packs: ['hot'], jars: ['quart'], minutes: [50, 55, 60, 65], source: 'MSU_FIG', status: 'verified' },
  { product: 'pineapple', packs: ['hot'], jars: ['pint'], minutes: [15, 20, 20, 25], source: 'OSU_CHART', status: 'memory', also: ['AIB539'], note: 'sea-level figure read, the rest from memory' },
  { product: 'pineapple', packs: ['hot'], jars: ['quart'], minutes: [20, 25, 30, 35], source: 'OSU_CHART', status: 'memory', also: ['AIB539'], note: 'sea-level figure read, the rest from memory' },
  { product: 'fruit-cocktail-mixed', packs: ['raw'], jars: ['half-pint', 'pint'], minutes: [20, 25, 30, 35], source: 'AIB539', status: 'memory', note: 'fairly sure' },
  { product: 'spiced-crab-apples', packs: ['hot'], jars: ['pint'], minutes: [20, 25, 30, 35], source: 'AIB539', status: 'memory', note: 'fairly sure' },
  { product: 'spiced-apple-rings', packs: ['hot'], jars: ['half-pint', 'pint'], minutes: [10, 15, 20], source: 'AIB539', status: 'memory', note: 'fairly sure' },
  { product: 'pie-filling-apple', packs: ['hot'], jars: ['pint', 'quart'], minutes: [25, 30, 35, 40], source: 'AIB_APPLEPIE', status: 'verified', note: '>6000 ft value from memory (sure)' },
  { product: 'pie-filling-blueberry', packs: ['hot'], jars: ['pint', 'quart'], minutes: [30, 35, 40, 45], source: 'BLUEBERRYPIE', status: 'verified' },
  { product: 'pie-filling-cherry', packs: ['hot'], jars: ['pint', 'quart'], minutes: [30, 35, 40, 45], source: 'AIB539', status: 'memory' },
  { product: 'pie-filling-peach', packs: ['hot'], jars: ['pint', 'quart'], minutes: [30, 35, 40, 45], source: 'AIB539', status: 'memory' },
  { product: 'tomatoes-crushed', packs: ['hot'], jars: ['pint'], minutes: [35, 40, 45, 50], source: 'AIB539', status: 'memory', note: 'sure; procedure page seen without its table' },
  { product: 'tomatoes-crushed', packs: ['hot'], jars: ['quart'], minutes: [45, 50, 55, 60], source: 'AIB539', status: 'memory' },
  { product: 'tomato-juice', packs: ['hot'], jars: ['pint'], minutes: [35, 40, 45, 50], source: 'EDIS_TOMJUICE', status: 'verified' },
  { product: 'tomato-juice', packs: ['hot'], jars: ['quart'], minutes: [40, 45, 50, 55], source: 'EDIS_TOMJUICE', status: 'verified' },
  { product: 'tomatoes-whole-in-water', packs: ['hot', 'raw'], jars: ['pint'], minutes: [40, 45, 50, 55], source: 'TOMWHOLE', status: 'verified' },
  { product: 'tomatoes-whole-in-water', packs: ['hot', 'raw'], jars: ['quart'], minutes: [45, 50, 55, 60], source: 'TOMWHOLE', status: 'verified' },
  { product: 'tomatoes-whole-in-juice-or-raw-no-liquid', packs: ['hot', 'raw'], jars: ['pint', 'quart'], minutes: [85, 90, 95, 100], source: 'AIB539', status: 'memory' },
] as const satisfies readonly PrintedProcessRow[];
