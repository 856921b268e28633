import { describe, expect, it } from 'vitest';
import { dryForm } from '#lib/forms/set-aside.ts';

const typed = { id: 'dry-act-0001', code: 'S-25291-RNG-1', trays: '4', centiC: '57', roomC: '20,5', humidityPct: '60' };

describe('the form that lays a set-aside to dry', () => {
  it('takes the heat of a dryer and the air of a room', () => {
    expect(dryForm.parse({ ...typed, way: 'oven' })).toMatchObject({ way: 'oven', centiC: 5700 });
    expect(dryForm.parse({ ...typed, way: 'oven' })).not.toHaveProperty('humidityPct');
    expect(dryForm.parse({ ...typed, way: 'windowsill' })).toMatchObject({ centiC: 2050, humidityPct: 60 });
    expect(dryForm.parse(typed)).toMatchObject({ way: 'dryer', seedsOut: false });
  });

  it('asks for the room’s air where that dries', () => {
    const answer = dryForm.safeParse({ ...typed, way: 'windowsill', humidityPct: '' });
    expect(answer.error?.issues.map((i) => i.message)).toEqual(['say how warm and how humid the room is']);
    expect(dryForm.safeParse({ ...typed, humidityPct: '120' }).success).toBe(false);
  });
});
