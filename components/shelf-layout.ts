/**
 * Where jars stand on a shelf, to scale, in millimetres. Pitch is the square a jar takes with its band and lid.
 * A column is one pitch wide and holds every jar behind and above the front one:
 * columns x floor(depth / pitch) x min(2, floor(clear height / jar height)).
 */
export type JarKind = { readonly pitchMm: number; readonly heightMm: number };
export type ShelfSize = { readonly widthMm: number; readonly depthMm: number; readonly clearMm: number };
export type ShelfJars = {
  readonly line: string;
  readonly foodColour: string;
  readonly jarKind: JarKind;
  readonly count: number;
  readonly label: string;
  /** Not there yet: drawn dashed. */
  readonly planned?: boolean;
  readonly href?: string;
};

/** Jars stand two high at most: a third would have to be lifted off to reach the first. */
const MOST_LAYERS = 2;

export const jarsDeep = (shelf: ShelfSize, kind: JarKind): number => Math.floor(shelf.depthMm / kind.pitchMm);
export const jarsHigh = (shelf: ShelfSize, kind: JarKind): number =>
  Math.min(MOST_LAYERS, Math.floor(shelf.clearMm / kind.heightMm));

/** Jars of one kind that fill a shelf; 0 when the jar is taller or deeper than the shelf. */
export const shelfCapacity = (shelf: ShelfSize, kind: JarKind): number =>
  Math.floor(shelf.widthMm / kind.pitchMm) * jarsDeep(shelf, kind) * jarsHigh(shelf, kind);

/** One jar seen from the front; `behind` counts it and those behind it. Millimetres from the left end and from the board. */
export type FrontJar = { readonly x: number; readonly bottom: number; readonly behind: number };
export type ShelfGroup = {
  readonly jars: ShelfJars;
  readonly x: number;
  readonly widthMm: number;
  readonly placed: number;
  readonly fronts: readonly FrontJar[];
};
export type ShelfLayout = {
  readonly groups: readonly ShelfGroup[];
  readonly usedMm: number;
  /** Share of the width taken, 0 to 1. */
  readonly fullness: number;
  /** What does not fit, line by line. */
  readonly left: readonly { readonly jars: ShelfJars; readonly count: number }[];
};

/** Stands the lines beside each other in the order given; a line begins a new column. */
export function shelfLayout(shelf: ShelfSize, stock: readonly ShelfJars[]): ShelfLayout {
  const groups: ShelfGroup[] = [];
  const left: { jars: ShelfJars; count: number }[] = [];
  let usedMm = 0;
  for (const jars of stock) {
    const { pitchMm } = jars.jarKind;
    const perColumn = jarsDeep(shelf, jars.jarKind) * jarsHigh(shelf, jars.jarKind);
    const room = Math.floor((shelf.widthMm - usedMm) / pitchMm);
    const columns = perColumn > 0 ? Math.min(Math.ceil(jars.count / perColumn), room) : 0;
    const placed = Math.min(jars.count, columns * perColumn);
    if (placed < jars.count) left.push({ jars, count: jars.count - placed });
    if (placed === 0) continue;
    groups.push({
      jars,
      x: usedMm,
      widthMm: columns * pitchMm,
      placed,
      fronts: frontJars(shelf, jars, usedMm, placed),
    });
    usedMm += columns * pitchMm;
  }
  return { groups, usedMm, fullness: shelf.widthMm > 0 ? usedMm / shelf.widthMm : 0, left };
}

/** Fills column by column: the bottom layer from front to back, then the upper one. */
function frontJars(shelf: ShelfSize, jars: ShelfJars, fromX: number, placed: number): FrontJar[] {
  const deep = jarsDeep(shelf, jars.jarKind);
  const high = jarsHigh(shelf, jars.jarKind);
  const fronts: FrontJar[] = [];
  let rest = placed;
  for (let x = fromX; rest > 0; x += jars.jarKind.pitchMm) {
    for (let layer = 0; layer < high && rest > 0; layer++) {
      const behind = Math.min(deep, rest);
      fronts.push({ x, bottom: layer * jars.jarKind.heightMm, behind });
      rest -= behind;
    }
  }
  return fronts;
}
