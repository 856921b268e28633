/** Minutes at a full boil from a pan's own loss, g of water a minute. Learnt per pan and burner; ±30 % until it is (estimate). */
export const BOIL_TIME_SPREAD = 0.3;

/** RangeError unless the pan loses more than 0 g/min. Nothing to boil off takes 0 minutes. Heating up comes on top. */
export function boilMinutes(boil: { evaporateG: number; panGPerMin: number }): number {
  if (!(boil.panGPerMin > 0))
    throw new RangeError(`a pan at the boil loses more than 0 g a minute, got ${boil.panGPerMin}`);
  return Math.max(0, boil.evaporateG) / boil.panGPerMin;
}
