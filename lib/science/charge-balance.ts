/**
 * pH from charge balance: [H+] + Cat = Σ C·z(pH) + [OH-], with Davies activity coefficients. C in mol acid and Cat in eq of
 * net strong cations (K + Na + 2 Mg + half of Ca - P), each per kg of water. Source: Davies 1962 (textbook form).
 * Against buffers ±0.1; used from pH 2 to 5.5.
 */
import { type AcidName, PKA } from './acid-constants.ts';
import { brent } from './root.ts';

export type AcidMolality = Readonly<Partial<Record<AcidName, number>>>;

const KW = 1e-14;
const MOST_IONIC_STRENGTH = 0.5;

/** Davies: log10 of the activity coefficient of an ion of charge z. Ionic strength capped at 0.5. */
function logActivity(z: number, ionicStrength: number): number {
  const root = Math.sqrt(Math.min(MOST_IONIC_STRENGTH, ionicStrength));
  return -0.509 * z * z * (root / (1 + root) - 0.3 * root * root);
}

interface Charges {
  /** Σ C·z, eq/kg. */
  readonly anions: number;
  /** Σ C·z², mol/kg. */
  readonly squared: number;
  readonly hydrogen: number;
  readonly hydroxide: number;
}

function chargesAt(acids: AcidMolality, pH: number, ionicStrength: number): Charges {
  const activity = 10 ** -pH;
  const g1 = 10 ** logActivity(1, ionicStrength);
  let anions = 0;
  let squared = 0;
  for (const [name, molality] of Object.entries(acids) as [AcidName, number][]) {
    let term = 1;
    let sum = 1;
    let first = 0;
    let second = 0;
    for (const [k, pKa] of PKA[name].entries()) {
      const step = logActivity(k, ionicStrength) - logActivity(k + 1, ionicStrength);
      term *= 10 ** (step - pKa) / activity;
      sum += term;
      first += (k + 1) * term;
      second += (k + 1) ** 2 * term;
    }
    anions += (molality * first) / sum;
    squared += (molality * second) / sum;
  }
  return { anions, squared, hydrogen: activity / g1, hydroxide: KW / activity / g1 };
}

const ionicStrengthOf = (q: Charges, cation: number): number => (q.squared + Math.abs(cation) + q.hydrogen) / 2;

/** pH of a solution, 0 to 13.5. RangeError when no pH balances the charges. */
export function solvePh(acids: AcidMolality, cation: number): number {
  let strength = Math.max(1e-4, cation);
  let pH = Number.NaN;
  for (let i = 0; i < 300; i++) {
    const excess = (at: number): number => {
      const q = chargesAt(acids, at, strength);
      return q.anions + q.hydroxide - q.hydrogen - cation;
    };
    const next = brent(excess, { low: 0, high: 13.5, within: 1e-12 });
    const wanted = ionicStrengthOf(chargesAt(acids, next, strength), cation);
    if (Math.abs(next - pH) < 1e-8 && Math.abs(wanted - strength) < 1e-8) return next;
    pH = next;
    strength = (strength + wanted) / 2;
  }
  throw new RangeError('the acid balance did not settle');
}

/** Net strong cations, eq per kg water, that hold these acids at a pH. */
export function cationAt(acids: AcidMolality, pH: number): number {
  let strength = 0.05;
  let cation = Number.NaN;
  for (let i = 0; i < 300; i++) {
    const q = chargesAt(acids, pH, strength);
    const next = q.anions + q.hydroxide - q.hydrogen;
    const wanted = ionicStrengthOf(q, next);
    if (Math.abs(next - cation) < 1e-10 && Math.abs(wanted - strength) < 1e-10) return next;
    cation = next;
    strength = (strength + wanted) / 2;
  }
  throw new RangeError('the acid balance did not settle');
}
