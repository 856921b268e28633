/**
 * Runs a benchmark of the season forecast as a plain program: `node test/bench/run.mjs`. Inside the test runner the same code
 * takes about a third longer, which says nothing about the program.
 */
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import ts from 'typescript';

const root = new URL('../..', import.meta.url).pathname;
const files = [
  ...readdirSync(join(root, 'lib/forecast')).map((file) => `lib/forecast/${file}`),
  'test/forecast/toy-scenario.ts',
  'test/bench/forecast-speed.ts',
];
const compilerOptions = {
  module: ts.ModuleKind.ESNext,
  target: ts.ScriptTarget.ES2022,
  rewriteRelativeImportExtensions: true,
  verbatimModuleSyntax: true,
};

const folder = mkdtempSync(join(tmpdir(), 'forecast-speed-'));
try {
  writeFileSync(join(folder, 'package.json'), '{"type":"module","imports":{"#lib/*.ts":"./lib/*.js"}}');
  for (const file of files) {
    const to = join(folder, file.replace(/ts$/, 'js'));
    mkdirSync(dirname(to), { recursive: true });
    writeFileSync(to, ts.transpileModule(readFileSync(join(root, file), 'utf8'), { compilerOptions }).outputText);
  }
  await import(pathToFileURL(join(folder, 'test/bench/forecast-speed.js')).href);
} finally {
  rmSync(folder, { recursive: true });
}
