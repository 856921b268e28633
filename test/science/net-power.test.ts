import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { BURNER_EFFICIENCY, boilOffGPerMin, netPower } from '#lib/science/net-power.ts';

describe('net power', () => {
  it('of 1 kW boils off 1.595 kg an hour', () => {
    assert.ok(Math.abs((boilOffGPerMin(1) * 60) / 1000 - 1.595) < 0.001);
  });

  it('is burner by efficiency less the losses of the pan', () => {
    assert.equal(netPower({ burnerKw: 3, efficiency: 0.4, lossKw: 0.12 }).toFixed(2), '1.08');
  });

  it('comes with efficiencies in order, gas lowest and induction highest', () => {
    for (const { low, typ, high } of Object.values(BURNER_EFFICIENCY)) assert.ok(low < typ && typ < high);
    assert.ok(BURNER_EFFICIENCY['gas hob'].high < BURNER_EFFICIENCY.induction.low);
  });
});
