/**
 * May it be sold? A gate, not a checkbox: every reason against it, in words; none when it may go to the stall. The local
 * code decides beyond that. Standards named: traceable ingredients and a tested process are what processor guidance asks of
 * a small maker (common practice); the limits themselves are those of the process and seal verdicts of the lot.
 */
import type { HeldLot } from '#lib/ledger/lot.ts';

export interface SaleQuestion {
  readonly lot: Pick<HeldLot, 'kind' | 'household' | 'process' | 'seal' | 'hold' | 'label'>;
  /** What the rule card says of juice; empty until it is answered. */
  readonly juiceRule: string;
  /** False where no record says what went in. */
  readonly ingredientsKnown: boolean;
  /** Codes of fruit lots that were picked up from the ground or culled. */
  readonly badFruit: readonly string[];
  readonly ruleCardChecked: boolean;
}

/** Reasons against a sale, the gravest first. */
export function againstSale({ lot, juiceRule, ingredientsKnown, badFruit, ruleCardChecked }: SaleQuestion): string[] {
  return [
    ...againstSaleOfLot(lot, juiceRule),
    ...badFruit.map((code) => `ground-fall or cull fruit in it: ${code}`),
    ...(ingredientsKnown ? [] : ['what went in is not on record']),
    ...(ruleCardChecked ? [] : ['the rule card of the place of sale is not filled in and dated']),
  ];
}

/** What the lot's own facts say against it: holds, household lines, process and seal. No such jar leaves as sold. */
export function againstSaleOfLot(lot: SaleQuestion['lot'], juiceRule: string): string[] {
  const why: string[] = [];
  if (lot.hold) why.push(`on hold: ${lot.hold}`);
  if (lot.household) why.push('for the household and gifts');
  if (lot.kind === 'jars') {
    if (lot.process !== 'as tested') why.push(`process ${lot.process ?? 'unknown'}`);
    if (lot.seal !== 'sealed')
      why.push(lot.seal === 'waiting' ? 'seals not checked yet' : `seal ${lot.seal ?? 'unknown'}`);
  }
  // 21 CFR 120 asks five logs of juice for sale; what a small maker may do instead differs from place to place.
  if (/\b(juice|sweet cider)\b/i.test(lot.label) && juiceRule === '')
    why.push(
      'juice: what your place asks of it is not on the rule card (a warning, or a treatment that takes five logs off)',
    );
  if (lot.kind === 'cold-jars' || lot.kind === 'frozen') why.push('kept cold: no tested process is on record for it');
  return why;
}
