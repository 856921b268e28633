import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { powderStrength, powderStrengths } from '#lib/science/learn-powder.ts';
import { normalDraws } from '#test/support/normal-draws.ts';

describe('the strength of a powder', () => {
  const prior = { low: 3, typ: 5.5, high: 9 };

  it('is the table’s before any plate was read', () => {
    const none = powderStrength(prior, []);
    assert.ok(Math.abs(none.low - 3) < 0.1 && Math.abs(none.high - 9) < 0.25, JSON.stringify(none));
    assert.ok(Math.abs(none.middle - 5.5) < 0.1, JSON.stringify(none));
  });

  it('rises with plates that set and falls with plates that ran', () => {
    const batch = { ownEq150G: 5, needEq150G: 10, powderG: 130 };
    const plain = powderStrength(prior, []).middle;
    assert.ok(powderStrength(prior, [{ ...batch, plate: 2 }]).middle > plain);
    assert.ok(powderStrength(prior, [{ ...batch, plate: 0 }]).middle < plain);
  });

  it('moves with its alcohol tests: a lump to the strong side, flakes to the weak, and each narrows it', () => {
    const [none] = powderStrengths(prior, [[]]);
    const of = (...clots: ('high' | 'medium' | 'low')[]) => powderStrengths(prior, [[]], [clots])[0];
    const [lump, lumps, flakes] = [of('high'), of('medium'), of('low')];
    assert.ok(none && lump && lumps && flakes);
    assert.ok(lump.middle > none.middle && flakes.middle < none.middle, `${lump.middle} ${flakes.middle}`);
    // The rule printed for juice puts several lumps of this extract at 5.0 g a gram.
    assert.ok(Math.abs(lumps.middle - 5) < 0.4, `${lumps.middle}`);
    for (const tested of [lump, lumps, flakes]) assert.ok(tested.high / tested.low < none.high / none.low);
    assert.ok((of('high', 'high')?.middle ?? 0) > lump.middle);
  });

  it('holds the true strength in about four of five generated lots, tested by alcohol alone', () => {
    const bandOf = (clot: 'high' | 'medium' | 'low') =>
      powderStrengths(prior, [[]], [[clot]])[0] ?? { low: 0, high: 0 };
    const bands = { high: bandOf('high'), medium: bandOf('medium'), low: bandOf('low') };
    let inside = 0;
    const runs = 1000;
    for (let run = 0; run < runs; run++) {
      const normal = normalDraws(run * 104_729 + 17);
      const truth = drawn(normal());
      const read = Math.log(truth) + 0.3 * normal();
      const { low, high } = bands[read >= Math.log(5.7735) ? 'high' : read >= Math.log(4.0825) ? 'medium' : 'low'];
      if (low <= truth && truth <= high) inside++;
    }
    assert.ok(Math.abs(inside / runs - 0.8) < 0.05, `covered ${inside / runs}`);
  });

  it('holds the true strength in about four of five generated households', () => {
    let inside = 0;
    let narrower = 0;
    const runs = 300;
    for (let run = 0; run < runs; run++) {
      const normal = normalDraws(run * 104_729 + 5);
      const truth = drawn(normal());
      const ownFactor = Math.exp(Math.log(1.4) * normal());
      const seen = Array.from({ length: 10 }, (_, i) => {
        const b = { ownEq150G: 3 + (i % 3), needEq150G: 10, powderG: 100 + 30 * (i % 5) };
        const has = Math.log((b.ownEq150G * ownFactor + (truth * b.powderG) / 150) / b.needEq150G) + 0.2 * normal();
        return { ...b, plate: has >= 0 ? (2 as const) : has >= Math.log(0.7) ? (1 as const) : (0 as const) };
      });
      const { low, high } = powderStrength(prior, seen);
      if (low <= truth && truth <= high) inside++;
      if (high / low < 3) narrower++;
    }
    assert.ok(Math.abs(inside / runs - 0.8) < 0.07, `covered ${inside / runs}`);
    assert.ok(narrower / runs > 0.9, `narrower than the table in ${narrower / runs}`);
  });

  it('of an untried lot starts from the others, and moves less than the lot that was tried', () => {
    const strong = Array.from({ length: 6 }, () => ({ ownEq150G: 4, needEq150G: 10, powderG: 130, plate: 2 as const }));
    const [tried, untried] = powderStrengths(prior, [strong, []]);
    const before = powderStrength(prior, []).middle;
    assert.ok(tried && untried);
    assert.ok(
      untried.middle > before + 0.1 && untried.middle < tried.middle,
      `${before} ${untried.middle} ${tried.middle}`,
    );
    assert.ok(untried.high / untried.low > tried.high / tried.low);
    assert.deepEqual([tried.n, untried.n], [6, 0]);
    const [alone] = powderStrengths(prior, [strong]);
    assert.ok(Math.abs((alone?.middle ?? 0) - powderStrength(prior, strong).middle) < 1e-9);
  });

  it('of each of three lots of a household lies in its band in about four of five, the untried one too', () => {
    const inside = [0, 0, 0];
    const runs = 300;
    for (let run = 0; run < runs; run++) {
      const normal = normalDraws(run * 104_729 + 11);
      const household = normal();
      const truths = [0, 1, 2].map(() => drawn(Math.sqrt(0.5) * household + Math.sqrt(0.5) * normal()));
      const ownFactor = Math.exp(Math.log(1.4) * normal());
      const lots = truths.map((truth, lot) =>
        Array.from({ length: [6, 3, 0][lot] ?? 0 }, (_, i) => {
          const b = { ownEq150G: 3 + (i % 3), needEq150G: 10, powderG: 100 + 30 * (i % 5) };
          const has = Math.log((b.ownEq150G * ownFactor + (truth * b.powderG) / 150) / b.needEq150G) + 0.2 * normal();
          return { ...b, plate: has >= 0 ? (2 as const) : has >= Math.log(0.7) ? (1 as const) : (0 as const) };
        }),
      );
      for (const [lot, { low, high }] of powderStrengths(prior, lots).entries()) {
        const truth = truths[lot] as number;
        if (low <= truth && truth <= high) inside[lot] = (inside[lot] ?? 0) + 1;
      }
    }
    for (const n of inside) assert.ok(Math.abs(n / runs - 0.8) < 0.08, `covered ${inside.map((x) => x / runs)}`);
  });
});

/** A strength of the range at z: half its cases below 5.5, a tenth below 3 and above 9. */
const drawn = (z: number): number => 5.5 * Math.exp((z * Math.log(z < 0 ? 5.5 / 3 : 9 / 5.5)) / 1.2815515655446004);
