/** How many to order: what is short, spare for what breaks, and a reserve, rounded up to whole cases. Common practice. */
export interface JarOrder {
  /** Fills before the date less empties and those expected back; below 0 where more come back than are filled. */
  readonly short: number;
  readonly broken: number;
  readonly reserve: number;
  readonly order: number;
  readonly cases: number;
}

export interface JarNeed {
  readonly fillsByDate: number;
  /** All fills of the year: breakage and reserve are reckoned on them. */
  readonly fills: number;
  readonly empties: number;
  readonly back: number;
  /** Shares of the fills. */
  readonly breakage: number;
  readonly reserve: number;
  readonly perCase: number;
}

/** Spare parts round up: half a jar that breaks is a jar. Throws RangeError for a case of none. */
export function jarsToOrder(n: JarNeed): JarOrder {
  const short = n.fillsByDate - n.empties - n.back;
  const broken = upTo(n.breakage * n.fills, 1);
  const reserve = upTo(n.reserve * n.fills, 1);
  const order = Math.max(0, short + broken + reserve);
  return { short, broken, reserve, order, cases: cases(order, n.perCase) };
}

/** One lid a fill, and `margin` of them more; only lids that may be used count as on hand. */
export function lidsToOrder(n: { fills: number; margin: number; usable: number; perBox: number }) {
  const needed = upTo(n.fills * (1 + n.margin), 1);
  const order = Math.max(0, needed - n.usable);
  return { needed, order, boxes: cases(order, n.perBox) };
}

export function cases(order: number, perCase: number): number {
  if (!(perCase > 0)) throw new RangeError(`A case holds 1 or more, not ${perCase}`);
  return Math.ceil(order / perCase - 1e-9);
}

const upTo = (x: number, step: number): number => Math.ceil(x / step - 1e-9) * step;
