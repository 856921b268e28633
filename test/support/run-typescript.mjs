/**
 * `node --import …/run-typescript.mjs program.ts`: runs the project's own TypeScript in a process of its own, without a
 * test runner around it. Types are taken off file by file; what was taken off once is kept in STILLROOM_TRANSPILED.
 */
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { register } from 'node:module';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { isMainThread } from 'node:worker_threads';

if (isMainThread) register(import.meta.url);

/** @type {import('node:module').LoadHook} */
export async function load(url, context, nextLoad) {
  if (!url.startsWith('file:') || !url.endsWith('.ts')) return nextLoad(url, context);
  return { format: 'module', shortCircuit: true, source: await withoutTypes(fileURLToPath(url)) };
}

/** @param {string} path */
async function withoutTypes(path) {
  const text = readFileSync(path, 'utf8');
  const folder = process.env.STILLROOM_TRANSPILED;
  const kept = folder && join(folder, `${createHash('sha256').update(path).update(text).digest('hex')}.mjs`);
  if (kept && existsSync(kept)) return readFileSync(kept, 'utf8');
  const { default: ts } = await import('typescript');
  const { outputText } = ts.transpileModule(text, {
    fileName: path,
    compilerOptions: { module: ts.ModuleKind.ESNext, target: ts.ScriptTarget.ES2022 },
  });
  if (kept) {
    writeFileSync(`${kept}.part`, outputText);
    renameSync(`${kept}.part`, kept);
  }
  return outputText;
}
