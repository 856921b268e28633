/** Sugar a home-dried powder carries, g, with its band: powder × grams of sugar per gram (estimates of the reference table). */
import { POWDER_STRENGTH } from '#lib/reference/pectin-sources.ts';

export function powderCarries(powder: { powderId: string; grams: number }): { typ: number; low: number; high: number } {
  const row = POWDER_STRENGTH.find((r) => r.id === powder.powderId);
  if (!row) throw new RangeError(`"${powder.powderId}" is not a powder of the table`);
  const { low, typ, high } = row.sugarPerG;
  return { typ: powder.grams * typ, low: powder.grams * low, high: powder.grams * high };
}
