import { z } from 'zod';
import { actId, number, word } from './fields.ts';

/** A new place: its name, time zone, and how high its kitchen lies (every setting point and process time hangs on it). */
export const ownPlace = z
  .object({
    id: actId,
    name: word('the name', 60),
    timeZone: z
      .string()
      .refine((tz) => Intl.supportedValuesOf('timeZone').includes(tz) || tz === 'UTC', 'that time zone is not known'),
    altitude: number({ what: 'the altitude', min: -400, max: 5000 }),
    altitudeUnit: z.enum(['m', 'ft']),
  })
  .transform(({ altitude, altitudeUnit, ...rest }) => ({
    ...rest,
    altitudeM: Math.round(altitudeUnit === 'm' ? altitude : altitude * 0.3048),
  }));
