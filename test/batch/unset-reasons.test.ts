import { describe, expect, it } from 'vitest';
import { type UnsetLog, unsetReasons } from '#lib/batch/unset-reasons.ts';

/** A batch that met its sheet in everything. */
const sound: UnsetLog = {
  finalG: 2143,
  lastG: 2140,
  brix: 65,
  lastBrix: 65,
  stopC: 103,
  lastC: 103,
  lastPlate: 2,
  boiledMin: 13,
  plannedMin: 13,
  preparedG: 1380,
  ceilingG: 1880,
  softShare: 0,
  lowPectin: [],
  sugarG: 1200,
  recipeSugarG: 1200,
  powder: false,
};

describe('why it did not set', () => {
  it('is not made up where the log shows no cause', () => {
    expect(unsetReasons(sound)).toEqual(['The log shows no cause: its end weight and readings met the sheet.']);
  });

  it('puts what was measured first: an early stop by weight, then a short sugar, then soft fruit', () => {
    const reasons = unsetReasons({ ...sound, lastG: 2300, sugarG: 900, softShare: 0.35 });
    expect(reasons.map((r) => r.split(':')[0])).toEqual([
      'Stopped early',
      'Short of sugar',
      '35 % of the fruit was soft',
    ]);
    expect(reasons[0]).toContain('157 g over its stop weight');
  });

  it('names each of the other causes only past its mark', () => {
    const one = (change: Partial<UnsetLog>) => unsetReasons({ ...sound, ...change })[0];
    expect(one({ lastBrix: 62 })).toContain('62 °Bx, 65 was the aim');
    expect(one({ lastC: 101.2 })).toContain('101.2 °C at the last reading, 103.0 °C was the guide');
    expect(one({ lastPlate: 0 })).toContain('plate at the stove ran');
    expect(one({ boiledMin: 40 })).toContain('Boiled 40 minutes, 13 were planned');
    expect(one({ preparedG: 2760 })).toContain('A large pan: 2.76 kg');
    expect(one({ lowPectin: ['sour cherry'] })).toContain('sour cherry');
    for (const near of [{ lastG: 2180 }, { lastBrix: 64.2 }, { lastC: 102.6 }, { sugarG: 1160 }, { boiledMin: 20 }])
      expect(one(near)).toContain('no cause');
  });

  it('says that nothing was logged rather than that all was well', () => {
    expect(unsetReasons({ ...sound, lastG: null, lastBrix: null, lastC: null, lastPlate: null })).toEqual([
      expect.stringContaining('an early stop cannot be ruled out'),
    ]);
  });
});
