/** What a grower must know about a fruit beside its figures. From the sources of its rows; parts from memory say so. */
import type { FruitId } from './fruit-list.ts';

// biome-ignore format: one printed row to a line
export const FRUIT_NOTES = {
  'apple-dessert': 'parts from USDA 09004: 10 % core+stem, 13 % skin',
  'apple-cider-sweet': 'some cultivars reach pH 4.76: measure or blend with sharp fruit; class raised by upper published pH; a tested process may still need no acid for this fruit (follow the tested process as written)',
  pear: 'a 170-cultivar survey averaged pH 4.61 (to 5.58): not all pears are high-acid; class raised by upper published pH; a tested process may still need no acid for this fruit (follow the tested process as written)',
  'pear-asian': 'must be acidified for boiling-water canning',
  apricot: 'class raised by upper published pH; a tested process may still need no acid for this fruit (follow the tested process as written)',
  'peach-yellow': 'USDA pit 4 % is pit only of large fruit; plan 10-13 % pit + 8 % skin when peeling (from memory); class raised by upper published pH; a tested process may still need no acid for this fruit (follow the tested process as written)',
  'peach-white': 'no tested acidification exists: freeze only',
  'plum-european': 'class raised by upper published pH; a tested process may still need no acid for this fruit (follow the tested process as written)',
  blackberry: 'FDA list Washington fruit 3.85-4.50; early/wild fruit sharper',
  loganberry: 'boysenberry has a printed upper pH of 4.50 (weak source): treat boysenberry as class B',
  'elderberry-european': 'freeze, or only a tested weighed high-sugar jam',
  'elderberry-american': 'average pH 4.8-4.9: only high-sugar jam or jelly recipes tested for it',
  'mulberry-black': 'freeze unless the lot measures <= 4.2',
  kiwifruit: 'raw fruit protease; cook before gelatine desserts',
  rhubarb: 'leaves poisonous',
  tomato: 'always acidify for boiling-water canning',
} as const satisfies Partial<Record<FruitId, string>>;
