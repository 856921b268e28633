/** Lots alike in crop, grade, days, ripening, loss and waiting cost are one class: same columns, one row. */
import type { PlanLot } from './instance.ts';

export interface LotClass extends PlanLot {
  /** In the order entered; drawn in that order when a class is split back. */
  members: readonly PlanLot[];
}

const likeness = (l: PlanLot): string =>
  [l.crop, l.grade, l.avail, l.useBy, l.softFrom ?? '', l.lossPerDay ?? 0, l.waitCost ?? 0].join('|');

/** The classes; a class is called after its first lot. `merge` off gives each lot a class of its own. */
export function lotClasses(lots: readonly PlanLot[], merge: boolean): LotClass[] {
  const classes = new Map<string, PlanLot[]>();
  for (const lot of lots) {
    const key = merge ? likeness(lot) : lot.id;
    classes.set(key, [...(classes.get(key) ?? []), lot]);
  }
  return [...classes.values()].map((members) => ({
    ...(members[0] as PlanLot),
    kg: members.reduce((n, l) => n + l.kg, 0),
    members,
  }));
}
