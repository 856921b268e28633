/**
 * What is taken for granted before a household has batches of its own. All are estimates of this project; the ranges of the
 * losses, the ±30 % of the cook and the 0.3-1.0 of the inversion are those given beside the models. A range "low to high" is
 * read as holding four cases of five.
 */
import type { FigurePrior } from './learn-factor.ts';

const Z90 = 1.2815515655446004;
const fromRange = (low: number, high: number, batchLogSd: number): FigurePrior => ({
  middle: Math.sqrt(low * high),
  logSd: Math.log(high / low) / (2 * Z90),
  batchLogSd,
});

/** Without a figure of the pan's own: 16 to 42 g/min over the simulated burners (gas 1.75 kW to induction 2 kW, pan 30 cm). */
export const UNKNOWN_PAN: FigurePrior = fromRange(16, 42, 0.1);

/** With one: ±30 % is one standard deviation. The same pan and knob differ by about 10 % from day to day. */
export const knownPan = (gPerMin: number): FigurePrior => ({
  middle: gPerMin,
  logSd: Math.log(1.3),
  batchLogSd: 0.1,
});

/** Film on pan and tools 60 to 150 g a batch, and skimmings 0.5 to 2 % of about 2.5 kg. */
export const LOSSES: FigurePrior = fromRange(60 + 12, 150 + 50, 0.35);

/** Factor on the rate of inversion: 0.3 to 1.0. */
export const INVERSION_FACTOR: FigurePrior = fromRange(0.3, 1, 0.25);
