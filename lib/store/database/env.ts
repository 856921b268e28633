import { isAbsolute, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

/** Where the records are kept: one SQLite file, or a PostgreSQL database shared by several processes. */
export type DatabaseAddress =
  | { readonly kind: 'sqlite'; readonly path: string; readonly url: string }
  | { readonly kind: 'postgresql'; readonly url: string };

export const DEFAULT_DATABASE_URL = 'file:./data/stillroom.db';

/**
 * Reads a DATABASE_URL: `file:` with a path (a relative one is meant from the project folder) or `postgresql:`.
 * Blank or missing means the default file.
 * @throws RangeError when it is neither; the message names only the scheme, for the rest may hold a password.
 */
export function databaseAddress(text: string | undefined, projectFolder: string): DatabaseAddress {
  const url = text?.trim() || DEFAULT_DATABASE_URL;
  if (/^postgres(ql)?:\/\//.test(url)) return { kind: 'postgresql', url };
  if (!url.startsWith('file:')) {
    throw new RangeError(`DATABASE_URL must begin with file: or postgresql://, not "${url.split(':')[0]}"`);
  }
  const given = url.startsWith('file://') ? fileURLToPath(url) : url.slice('file:'.length);
  const path = isAbsolute(given) ? given : resolve(projectFolder, given);
  return { kind: 'sqlite', path, url: `file:${path}` };
}
