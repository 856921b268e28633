/** Who and what is taken when, on one day: each person, ring, vessel and canner by itself. */
export interface Booking {
  /** e.g. "ring 2", "vessel pan 1", "person ada". */
  resource: string;
  fromH: number;
  toH: number;
}

export interface Need {
  /** "person", "ring", "canner" or "vessel <id>"; any one free unit of it will do. */
  kind: string;
  hours: number;
  /** A load of so many jars: the smallest canner that takes them is asked first. */
  load?: { jar: string; count: number };
}

/** A canner and how many jars of each kind it takes at once. */
export interface DayCanner {
  holds: Readonly<Record<string, number>>;
}

interface Unit {
  name: string;
  holds?: DayCanner['holds'];
  fromH: number;
  toH: number;
  /** Hours it may be booked in all. */
  hours: number;
  taken: Booking[];
}

export interface DayResources {
  fromH: number;
  toH: number;
  rings: number;
  canners: readonly DayCanner[];
  people: readonly { id: string; fromH: number; toH: number; hours: number }[];
}

const EPSILON = 1e-9;

export class DayBook {
  private readonly units = new Map<string, Unit[]>();

  constructor(day: DayResources, vessels: readonly { id: string; count: number }[]) {
    const alike = (kind: string, count: number, toH: number) =>
      this.units.set(
        kind,
        Array.from({ length: count }, (_, i) => ({
          name: `${kind} ${i + 1}`,
          fromH: day.fromH,
          toH,
          hours: Infinity,
          taken: [],
        })),
      );
    alike('ring', day.rings, day.toH);
    alike('canner', day.canners.length, day.toH);
    this.units.get('canner')?.forEach((u, i) => {
      u.holds = (day.canners[i] as DayCanner).holds;
    });
    // A pan may stand and steep when nobody is in the kitchen any more.
    for (const v of vessels) alike(`vessel ${v.id}`, v.count, 24);
    this.units.set(
      'person',
      day.people.map((x) => ({
        name: `person ${x.id}`,
        fromH: Math.max(x.fromH, day.fromH),
        toH: Math.min(x.toH, day.toH),
        hours: x.hours,
        taken: [],
      })),
    );
  }

  /** Earliest start from `from` on at which one unit of every kind is free for its hours; null when there is none today. */
  earliest(needs: readonly Need[], from: number): { fromH: number; bookings: Booking[] } | null {
    const units = needs.flatMap((n) => this.fitting(n));
    const starts = [from, ...units.map((u) => u.fromH), ...units.flatMap((u) => u.taken.map((b) => b.toH))].filter(
      (h) => h >= from - EPSILON,
    );
    for (const fromH of [...new Set(starts)].sort((a, b) => a - b)) {
      const bookings = needs.map((n) => this.free(n, fromH));
      if (bookings.every((b) => b !== null)) return { fromH, bookings: bookings as Booking[] };
    }
    return null;
  }

  /** Units of the kind; canners that take the load, the smallest first. */
  private fitting({ kind, load }: Need): readonly Unit[] {
    const units = this.units.get(kind) ?? [];
    if (!load) return units;
    const takes = (u: Unit) => u.holds?.[load.jar] ?? 0;
    return units.filter((u) => takes(u) >= load.count).sort((a, b) => takes(a) - takes(b));
  }

  private free(n: Need, fromH: number): Booking | null {
    const toH = fromH + n.hours;
    const unit = this.fitting(n).find((u) => {
      const booked = u.taken.reduce((sum, b) => sum + b.toH - b.fromH, 0);
      return (
        fromH >= u.fromH - EPSILON &&
        toH <= u.toH + EPSILON &&
        booked + n.hours <= u.hours + EPSILON &&
        u.taken.every((b) => toH <= b.fromH + EPSILON || fromH >= b.toH - EPSILON)
      );
    });
    return unit ? { resource: unit.name, fromH, toH } : null;
  }

  take(bookings: readonly Booking[]): void {
    for (const b of bookings) this.unit(b.resource)?.taken.push(b);
  }

  release(bookings: readonly Booking[]): void {
    for (const b of bookings) {
      const unit = this.unit(b.resource);
      if (unit) unit.taken = unit.taken.filter((x) => x !== b);
    }
  }

  private unit(name: string): Unit | undefined {
    return [...this.units.values()].flat().find((u) => u.name === name);
  }
}
