import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { GAS_CONSTANT, MOLAR_MASS } from '#lib/science/physical-constants.ts';

/** Standard atomic weights, IUPAC 2021 (abridged). */
const ATOM = { C: 12.011, H: 1.008, O: 15.999 };
const molar = (c: number, h: number, o: number): number => c * ATOM.C + h * ATOM.H + o * ATOM.O;

describe('molar masses', () => {
  it('are the sums of their atoms', () => {
    const formulas = {
      water: [0, 2, 1],
      sucrose: [12, 22, 11],
      glucose: [6, 12, 6],
      fructose: [6, 12, 6],
      sorbitol: [6, 14, 6],
      citric: [6, 8, 7],
      malic: [4, 6, 5],
      tartaric: [4, 6, 6],
      quinic: [7, 12, 6],
      oxalic: [2, 2, 4],
    } as const;
    for (const [name, [c, h, o]] of Object.entries(formulas)) {
      const given = MOLAR_MASS[name as keyof typeof formulas];
      assert.ok(Math.abs(given - molar(c, h, o)) < 0.02, `${name}: ${given}`);
    }
  });

  it('balance the splitting of sucrose', () => {
    const split = MOLAR_MASS.glucose + MOLAR_MASS.fructose - MOLAR_MASS.sucrose;
    assert.ok(Math.abs(split - MOLAR_MASS.water) < 0.01);
  });
});

describe('the gas constant', () => {
  it('is Boltzmann times Avogadro, both exact since 2019', () => {
    assert.ok(Math.abs(GAS_CONSTANT - 1.380649e-23 * 6.02214076e23) < 1e-9);
  });
});
