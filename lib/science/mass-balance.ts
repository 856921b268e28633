/**
 * What the pan must weigh at the finish, by definition of °Bx: sugar does not boil away, so dissolved solids in are dissolved solids
 * out. It depends on no altitude, barometer, thermometer or disputed table, which is why it is the most trusted finish.
 */
export interface BalanceInput {
  readonly grams: number;
  /** Soluble solids, per cent: fruit its °Bx, sugar 100, water 0. */
  readonly solublePct: number;
  /** Pulp, pips, skin, per cent: given only where the target °Bx is to be read on the liquid part. */
  readonly insolublePct?: number;
}

export interface MassBalance {
  readonly panTargetG: number;
  /** Negative when that much water must be added. */
  readonly evaporateG: number;
  readonly solidsG: number;
  readonly chargeG: number;
}

/**
 * `targetBrix` in per cent, above 0 to 100. `invertedShareGain` is the share by which the solids grow as sucrose takes up
 * water on inversion (see inversionGain); 0 when not given. RangeError for a negative mass or a target outside its range.
 */
export function massBalance(batch: {
  inputs: readonly BalanceInput[];
  targetBrix: number;
  invertedShareGain?: number;
}): MassBalance {
  const { inputs, targetBrix, invertedShareGain = 0 } = batch;
  if (!(targetBrix > 0 && targetBrix <= 100)) throw new RangeError(`a target is above 0 to 100 °Bx, got ${targetBrix}`);
  let chargeG = 0;
  let solidsG = 0;
  let insolubleG = 0;
  for (const { grams, solublePct, insolublePct = 0 } of inputs) {
    if (!(grams >= 0)) throw new RangeError(`a mass is 0 g or more, got ${grams}`);
    chargeG += grams;
    solidsG += (grams * solublePct) / 100;
    insolubleG += (grams * insolublePct) / 100;
  }
  solidsG *= 1 + invertedShareGain;
  const panTargetG = (100 * solidsG) / targetBrix + insolubleG;
  return { panTargetG, evaporateG: chargeG - panTargetG, solidsG, chargeG };
}
