/** Sugar a home-dried powder carries, g, with its band: powder × grams of sugar per gram, by the table (estimates) or as known of the lot. */
import { POWDER_STRENGTH } from '#lib/reference/pectin-sources.ts';
import type { StrengthRange } from './learn-powder.ts';

export function powderCarries(powder: { powderId: string; grams: number; sugarPerG?: StrengthRange }): StrengthRange {
  const row = POWDER_STRENGTH.find((r) => r.id === powder.powderId);
  if (!row) throw new RangeError(`"${powder.powderId}" is not a powder of the table`);
  const { low, typ, high } = powder.sugarPerG ?? row.sugarPerG;
  return { typ: powder.grams * typ, low: powder.grams * low, high: powder.grams * high };
}
