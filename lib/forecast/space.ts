/** Room that jars take, by geometry alone. Lengths in cm, volumes in litres. */
export interface JarSize {
  readonly diameterCm: number;
  readonly heightCm: number;
}
export interface ShelfSize {
  readonly depthCm: number;
  /** Clear height up to the next board. */
  readonly heightCm: number;
  /** Jars stood on each other at most; 2 is common practice. */
  readonly maxStack?: number;
}

/** Clearance beside each jar, in both directions. Estimate. */
export const GAP_CM = 0.2;
/** Share of a fridge's or freezer's gross volume that jars can fill. From memory, unmeasured: ask the user. */
export const USABLE_SHARE = 0.65;

/** Rows front to back, jars stacked, and both together: jars in one column. 0 when the jar does not fit. */
export function perColumn(jar: JarSize, shelf: ShelfSize): { rows: number; stack: number; perColumn: number } {
  const rows = Math.floor(shelf.depthCm / jar.diameterCm);
  const stack = Math.min(shelf.maxStack ?? 2, Math.floor(shelf.heightCm / jar.heightCm));
  return { rows, stack, perColumn: rows * stack };
}

/** Run of shelf front that `n` equal jars take, cm. Throws RangeError naming the edge that a jar does not pass. */
export function runCm(n: number, jar: JarSize, shelf: ShelfSize): number {
  const column = perColumn(jar, shelf);
  if (column.rows < 1)
    throw new RangeError(`A jar ${jar.diameterCm} cm wide does not stand on a shelf ${shelf.depthCm} cm deep`);
  if (column.stack < 1) throw new RangeError(`A jar ${jar.heightCm} cm high does not fit under ${shelf.heightCm} cm`);
  return Math.ceil(n / column.perColumn) * (jar.diameterCm + GAP_CM);
}

/** Litres that jars can fill in a compartment of this inner size. */
export function litres(
  inner: { widthCm: number; depthCm: number; heightCm: number },
  usableShare = USABLE_SHARE,
): number {
  return ((inner.widthCm * inner.depthCm * inner.heightCm) / 1000) * usableShare;
}
