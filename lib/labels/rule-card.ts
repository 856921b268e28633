/**
 * The rule card of the place of sale, as the household filled it in and dated it. The program knows no local rule: the card
 * says which lines the label carries, and the local code decides.
 */
export interface RuleCard {
  readonly maker: string;
  readonly address: string;
  readonly contact: string;
  /** Permit or registration number. */
  readonly permit: string;
  /** The sentence a home kitchen has to print, in its own wording. */
  readonly homeKitchen: string;
  /** What the place asks of juice: the warning it prints, or the treatment; empty until that is answered. */
  readonly juice: string;
  readonly checkedWith: string;
  /** Day it was checked, YYYY-MM-DD. */
  readonly checkedOn: string;
  readonly asks: readonly AskedLine[];
}

/** Lines a card may ask for beside what every sale label carries. */
export const ASKED_LINES = ['contact', 'permit', 'homeKitchen'] as const;
export type AskedLine = (typeof ASKED_LINES)[number];

export const RULE_CARD_FIELDS = [
  'maker',
  'address',
  'contact',
  'permit',
  'homeKitchen',
  'juice',
  'checkedWith',
  'checkedOn',
] as const;

/** The card from the place's settings; what is not filled in is empty. */
export function ruleCardOf(kept: Readonly<Record<string, string>> | undefined): RuleCard {
  const text = (field: string): string => (kept?.[field] ?? '').trim();
  return {
    maker: text('maker'),
    address: text('address'),
    contact: text('contact'),
    permit: text('permit'),
    homeKitchen: text('homeKitchen'),
    juice: text('juice'),
    checkedWith: text('checkedWith'),
    checkedOn: text('checkedOn'),
    asks: ASKED_LINES.filter((line) => text('asks').split(',').includes(line)),
  };
}
