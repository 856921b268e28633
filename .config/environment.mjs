// Where the project stands and what every program we start is told. Node builtins only: nothing is installed yet.
import { existsSync, mkdirSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

export const projectFolder = dirname(dirname(fileURLToPath(import.meta.url)));
export const inProject = (...parts) => join(projectFolder, ...parts);
export const onWindows = process.platform === 'win32';

/** Reads .env, if there is one; what the shell sets goes before it. */
export function loadDotEnv() {
  if (existsSync(inProject('.env'))) process.loadEnvFile?.(inProject('.env'));
}

/** Environment of every program we start: no telemetry, no look-ups of newer versions, no download of engines. */
export function childEnvironment(more = {}) {
  return {
    ...process.env,
    NEXT_TELEMETRY_DISABLED: '1',
    CHECKPOINT_DISABLE: '1',
    // Generating a client needs no native engine; Prisma only wants to see that one exists.
    PRISMA_SCHEMA_ENGINE_BINARY: process.env.PRISMA_SCHEMA_ENGINE_BINARY ?? process.execPath,
    ...more,
  };
}

/** DATABASE_URL with its path made absolute, so that every program means the same file. */
export function databaseUrl() {
  const url = process.env.DATABASE_URL?.trim() || 'file:./data/stillroom.db';
  if (!url.startsWith('file:') || url.startsWith('file://')) return url;
  return `file:${resolve(projectFolder, url.slice('file:'.length))}`;
}

/** A folder for what the checks leave behind (reports, logs); git does not see it. */
export function cacheFolder() {
  mkdirSync(inProject('.cache'), { recursive: true });
  return inProject('.cache');
}
