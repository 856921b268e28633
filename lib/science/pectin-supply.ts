/**
 * Pectin a batch brings, in grams of grade 150: mass × pectin × share drawn out × ripeness × own grade / 150, summed.
 * Pectin of most fruits is from memory, and the shares drawn out (bounded by water 0.26 and acid 0.79 of the total, Sharma),
 * the ripeness factors and the grade 130 of fruit are estimates: ±40 %. An alcohol test of the juice overrides the table.
 */
import { fruitOf } from '#lib/reference/fruits.ts';
import { POWDER_STRENGTH, RIPENESS, type RipenessRow } from '#lib/reference/pectin-sources.ts';
import type { Clot } from './clot-test.ts';
import type { StrengthRange } from './learn-powder.ts';
import { STANDARD_GRADE } from './pectin-need.ts';
import { FRUIT_GRADE, stockPectinPct } from './stock-carries.ts';

export type Ripeness = RipenessRow['ripeness'];
export type ExtractionRoute = 'pulp stays in' | 'one extraction' | 'two extractions';

export type PectinItem =
  | {
      readonly kind: 'fruit';
      readonly fruitId: string;
      readonly grams: number;
      readonly ripeness?: Ripeness;
      readonly route?: ExtractionRoute;
      readonly drawnOut?: number;
    }
  | { readonly kind: 'tested juice'; readonly grams: number; readonly clot: Clot | 'untested' }
  | { readonly kind: 'powder'; readonly powderId: string; readonly grams: number; readonly sugarPerG?: StrengthRange }
  | { readonly kind: 'bought pectin'; readonly grams: number; readonly grade?: number };

export interface PectinSupply {
  readonly eq150G: number;
  readonly relSd: number;
}

const DRAWN_OUT: Readonly<Record<ExtractionRoute, number>> = {
  'pulp stays in': 0.8,
  'one extraction': 0.5,
  'two extractions': 0.7,
};

/** RangeError for a fruit or powder not in the tables and for a negative mass. */
export function pectinSupply(items: readonly PectinItem[]): PectinSupply {
  const parts = items.map(supplyOf);
  const eq150G = parts.reduce((sum, part) => sum + part.eq150G, 0);
  const variance = parts.reduce((sum, part) => sum + (part.eq150G * part.relSd) ** 2, 0);
  return { eq150G, relSd: eq150G > 0 ? Math.sqrt(variance) / eq150G : 0 };
}

function supplyOf(item: PectinItem): PectinSupply {
  if (!(item.grams >= 0)) throw new RangeError(`a mass is 0 g or more, got ${item.grams}`);
  switch (item.kind) {
    case 'fruit': {
      const ripe = RIPENESS.find((r) => r.ripeness === (item.ripeness ?? 'just ripe'));
      const pectinG = (item.grams * fruitOf(item.fruitId).pectinPct.ripe) / 100;
      const share = item.drawnOut ?? DRAWN_OUT[item.route ?? 'pulp stays in'];
      const drawn = pectinG * share * (ripe?.effective ?? 1);
      return { eq150G: (drawn * FRUIT_GRADE) / STANDARD_GRADE, relSd: 0.4 };
    }
    case 'tested juice': {
      const pct = stockPectinPct(item.clot);
      const pectinG = (item.grams * pct.typ) / 100;
      return { eq150G: (pectinG * FRUIT_GRADE) / STANDARD_GRADE, relSd: item.clot === 'untested' ? 0.6 : 0.3 };
    }
    case 'powder':
      return powderSupply(item.powderId, item.grams, item.sugarPerG);
    case 'bought pectin':
      return { eq150G: (item.grams * (item.grade ?? STANDARD_GRADE)) / STANDARD_GRADE, relSd: 0.1 };
  }
}

/** The strength known of the lot replaces the table's, with its own spread. */
function powderSupply(powderId: string, grams: number, known: StrengthRange | undefined): PectinSupply {
  const row = POWDER_STRENGTH.find((r) => r.id === powderId);
  if (!row) throw new RangeError(`"${powderId}" is not a powder of the table`);
  const { low, typ, high } = known ?? row.sugarPerG;
  return { eq150G: (grams * typ) / STANDARD_GRADE, relSd: (high - low) / (2 * 1.2816 * typ) };
}
