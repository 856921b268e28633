/** A lot that needs no pan balance: jars by printed weight or by volume, frozen packs, dried packs. */
import type { BatchQuestion } from './batch-question.ts';
import type { DrawnJuice } from './drawn-juice.ts';
import { type Figure, figure } from './figure.ts';
import { type JarKind, jarFill } from './jar-fill.ts';
import type { PreparedLot } from './prepared-fruit.ts';
import { driedWeight, jarsByWeight, packsOf, type WeightPacks } from './weight-packs.ts';

export interface PackedLot {
  readonly packs: WeightPacks;
  readonly jars: Figure;
  readonly driedG: Figure | null;
}

export function packedLot(
  { recipe, fruit, jar, settings }: BatchQuestion,
  prepared: readonly PreparedLot[],
  juice: DrawnJuice | null,
): PackedLot {
  const { finish } = recipe;
  const preparedG = prepared.reduce((sum, p) => sum + p.preparedG.value, 0);
  const asPacks = (packs: WeightPacks, driedG: Figure | null = null): PackedLot => ({
    packs,
    driedG,
    jars: packs.ok ? packs.packs : NO_JARS,
  });
  if (finish.by === 'weight table')
    return asPacks(
      jarsByWeight(
        finish.crop,
        fruit.reduce((sum, f) => sum + f.grams, 0),
        jar.size,
      ),
    );
  if (finish.by === 'pack') return asPacks(packsOf(preparedG, finish.packG));
  if (finish.by === 'drying') {
    const dried = driedWeight(preparedG, finish.from, finish.to);
    return asPacks(packsOf(dried.value, finish.packG), dried);
  }
  if (finish.by === 'volume' && juice) return asPacks(byVolume(juice, settings.lossG, jar));
  return asPacks({ ok: false, reason: 'this recipe does not say how it is packed' });
}

function byVolume(juice: DrawnJuice, lossG: number, jar: JarKind): WeightPacks {
  const at = (grams: number) => jarFill(figure({ ...juice.juiceG, value: grams }), juice.brix.value, lossG, jar);
  const typ = at(juice.juiceG.value);
  const band = juice.juiceG.band;
  const jars = band ? { low: at(band.low).jars.value, high: at(band.high).jars.value } : typ.jars.band;
  return {
    ok: true,
    packs: { ...typ.jars, band: jars, formula: 'juice over its density, over one jar; whole jars' },
    leftG: typ.partialG,
  };
}

const NO_JARS: Figure = figure({ value: 0, unit: 'jars', formula: 'nothing to fill', inputs: [] });
