import { createHash } from 'node:crypto';
import type { ForecastInput } from './season-scenario.ts';

/** Changes whenever the same input would give other figures. */
export const MODEL_VERSION = 'season-4';
/** One seed for every run: what differs between two forecasts then comes from their inputs. */
export const SEASON_SEED = 20_250_501;

/** Name of a forecast's input: the same records give the same name, one jar more or less gives another. */
export function forecastHash(input: ForecastInput): string {
  return createHash('sha256')
    .update(`${MODEL_VERSION} ${SEASON_SEED} ${canonical(input)}`)
    .digest('hex')
    .slice(0, 32);
}

/** JSON with the fields in order of name, so that the way an object was put together does not matter. */
function canonical(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`;
  if (value === null || typeof value !== 'object') return JSON.stringify(value) ?? 'null';
  const fields = Object.entries(value).filter(([, v]) => v !== undefined);
  return `{${fields
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([k, v]) => `${JSON.stringify(k)}:${canonical(v)}`)
    .join(',')}}`;
}
