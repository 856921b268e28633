/**
 * What is in a jar, as its label and its card say it: names in descending weight as put in (Utah Department of Agriculture,
 * food label review), and the declared allergens among them. Masses in grams.
 */

/** `weighed`: from the batch's own lots; `recipe`: the recipe names it and no weight is on record; `noted`: said afterwards, without a weight. */
export type Basis = 'weighed' | 'recipe' | 'noted';

export interface Ingredient {
  readonly name: string;
  readonly grams: number | null;
  /** As a label names them: "tree nuts (almonds)". */
  readonly allergens: readonly string[];
  readonly basis: Basis;
}

/** Same names put together, the heaviest first; what has no weight comes last, by name. */
export function descending(parts: readonly Ingredient[]): Ingredient[] {
  const byName = new Map<string, Ingredient>();
  for (const p of parts) {
    const known = byName.get(p.name);
    if (!known) byName.set(p.name, p);
    else
      byName.set(p.name, {
        name: p.name,
        grams: known.grams === null && p.grams === null ? null : (known.grams ?? 0) + (p.grams ?? 0),
        allergens: [...new Set([...known.allergens, ...p.allergens])],
        basis: known.basis === 'weighed' ? p.basis : known.basis,
      });
  }
  return [...byName.values()]
    .filter((p) => p.grams === null || p.grams > 0)
    .sort((a, b) => (b.grams ?? 0) - (a.grams ?? 0) || a.name.localeCompare(b.name));
}

export const allergensOf = (parts: readonly Ingredient[]): string[] => [...new Set(parts.flatMap((p) => p.allergens))];

/** An allergen as a label names it, the tree nut by its species: "tree nuts (almonds)", "milk (butter)". */
export const allergenText = (allergen: string, ingredient: string): string =>
  allergen === ingredient ? allergen : `${allergen} (${ingredient})`;

/**
 * Water that is still in the food: what was put in less what boiled off. Common practice of label writers is to leave out
 * water that has gone again; fruit's own water counts first among what stays.
 */
export const waterLeft = (addedG: number, vapourG: number): number => Math.max(0, addedG - vapourG);
