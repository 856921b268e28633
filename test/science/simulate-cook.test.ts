import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { type Cook, simulateCook } from '#lib/science/simulate-cook.ts';
import { standardPressure } from '#lib/science/standard-pressure.ts';
import { celsius, pascal } from '#lib/units/quantity.ts';

/** 2 kg of strawberries (8.5 °Bx, 1.6 % pulp, 0.8 % acid, 1.5 g/kg potassium) with 1.5 kg of sugar in a 30 cm pan. */
const strawberries: Cook = {
  charge: {
    water: 1798,
    sucrose: 1515.3,
    glucose: 68.85,
    fructose: 68.85,
    citric: 16,
    ionsMmol: 3000 / 39.1,
    insoluble: 32,
  },
  startC: celsius(25),
  panAreaM2: 0.0707,
  netKw: 3 * 0.4 - 0.12,
  pressure: pascal(101_325),
  pH: 3.1,
  target: { elevationK: 4.44 },
  heatCapacity: 'mixing rule',
};

describe('a simulated cook', () => {
  /** The same equations stepped by another program, which let inversion begin only at the boil. No measured batch exists. */
  const others = [
    { burner: 'gas 3.0 kW', netKw: 3 * 0.4 - 0.12, boil: 11.8, total: 36.5, out: 2.8, inverted: 0.57 },
    { burner: 'gas 1.75 kW', netKw: 1.75 * 0.42 - 0.12, boil: 20.7, total: 58.8, out: 2.89, inverted: 0.72 },
    { burner: 'coil 1.8 kW', netKw: 1.8 * 0.75 - 0.12, boil: 10.3, total: 32.7, out: 2.78, inverted: 0.54 },
    { burner: 'induction 2.0 kW', netKw: 2 * 0.85 - 0.12, boil: 8.1, total: 26.3, out: 2.75, inverted: 0.47 },
    { burner: 'induction 3.5 kW', netKw: 3.5 * 0.85 - 0.12, boil: 4.5, total: 15.6, out: 2.67, inverted: 0.34 },
  ];
  it.each(others)('on $burner comes within 2 % of an independent one', ({ netKw, boil, total, out, inverted }) => {
    const own = simulateCook({ ...strawberries, netKw });
    assert.ok(Math.abs(own.minutesToBoil - boil) < 0.15, `boil ${own.minutesToBoil}`);
    assert.ok(Math.abs(own.end.minutes / total - 1) < 0.02, `total ${own.end.minutes}`);
    assert.ok(Math.abs(own.end.massG / 1000 - out) < 0.012, `out ${own.end.massG}`);
    assert.ok(Math.abs(own.end.inverted - inverted) < 0.02, `inverted ${own.end.inverted}`);
  });

  it('heats in the time its heat capacity takes, worked by hand', () => {
    const kJPerK = (4.186 * 1798 + 1.42 * (1515.3 + 137.7 + 16 + 32)) / 1000;
    const own = simulateCook(strawberries);
    const first = own.points[0]?.t ?? Number.NaN;
    assert.ok(Math.abs(own.minutesToBoil - (kJPerK * (first - 25)) / strawberries.netKw / 60) < 0.1);
  });

  it('stalls and then climbs: the boil rises faster at its end than at its start', () => {
    const { points } = simulateCook(strawberries);
    const rise = (i: number): number => (points.at(i)?.t ?? Number.NaN) - (points.at(i - 1)?.t ?? Number.NaN);
    assert.ok(rise(-2) > 1.5 * rise(1), `${rise(1)} then ${rise(-2)}`);
  });

  it('is slower with the polynomial, on a mountain and with less power', () => {
    const base = simulateCook(strawberries).end.minutes;
    assert.ok(simulateCook({ ...strawberries, heatCapacity: 'polynomial' }).end.minutes > base);
    assert.ok(simulateCook({ ...strawberries, pressure: standardPressure(1829) }).end.minutes > base);
    assert.ok(simulateCook({ ...strawberries, netKw: 0.9 }).end.minutes > base);
  });

  it('stops at a weight or at a °Bx as asked', () => {
    const byWeight = simulateCook({ ...strawberries, target: { panWeightG: 2700 } }).end;
    assert.ok(byWeight.massG <= 2700 && byWeight.massG > 2695);
    const byBrix = simulateCook({ ...strawberries, target: { brix: 65 } }).end;
    assert.ok(byBrix.brix >= 65 && byBrix.brix < 65.1);
  });

  it('is refused for a burner that cannot', () => {
    assert.throws(() => simulateCook({ ...strawberries, netKw: 0 }), RangeError);
    assert.throws(() => simulateCook({ ...strawberries, netKw: 0.02 }), RangeError);
  });
});
