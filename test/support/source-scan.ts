import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

const projectFolder = fileURLToPath(new URL('../..', import.meta.url));
const NOT_OURS = new Set([
  'node_modules',
  '.next',
  '.git',
  '.cache',
  'data',
  'generated',
  'test-results',
  'next-env.d.ts',
]);

/** Paths of the project's own files under a folder, from the project folder; a folder that is not there has none. */
export function filesUnder(folder: string, pattern = /./): string[] {
  const walk = (directory: string): string[] =>
    readdirSync(directory, { withFileTypes: true }).flatMap((entry) => {
      if (NOT_OURS.has(entry.name) || entry.name.startsWith('.env')) return [];
      const path = join(directory, entry.name);
      if (entry.isDirectory()) return walk(path);
      return entry.isFile() && pattern.test(path) ? [relative(projectFolder, path).replaceAll('\\', '/')] : [];
    });
  try {
    return walk(join(projectFolder, folder)).sort();
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return [];
    throw error;
  }
}

export const textOf = (path: string): string => readFileSync(join(projectFolder, path), 'utf8');

/** A place in a source text: "file:line what". */
export type Finding = string;

function visit(path: string, text: string, look: (node: ts.Node, found: (what: string) => void) => void): Finding[] {
  const kind = path.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true, kind);
  const findings: Finding[] = [];
  const walk = (node: ts.Node): void => {
    look(node, (what) => {
      const { line } = source.getLineAndCharacterOfPosition(node.getStart(source));
      findings.push(`${path}:${line + 1} ${what}`);
    });
    ts.forEachChild(node, walk);
  };
  walk(source);
  return findings;
}

/** `process` may also be the name of a canning process, so its members are named one by one. */
const IMPURE_MEMBERS = new Set([
  'Date.now',
  'Math.random',
  'performance.now',
  'crypto.randomUUID',
  'crypto.getRandomValues',
  ...['env', 'argv', 'cwd', 'exit', 'hrtime', 'memoryUsage', 'on', 'platform', 'stderr', 'stdout', 'uptime'].map(
    (m) => `process.${m}`,
  ),
]);

/** Reads of the clock, of chance or of the environment, and writes to the console. Comments and strings do not count. */
export function impurities(path: string, text: string): Finding[] {
  return visit(path, text, (node, found) => {
    if (ts.isNewExpression(node) && node.expression.getText() === 'Date' && !node.arguments?.length)
      found('new Date()');
    if (ts.isCallExpression(node) && node.expression.getText() === 'Date') found('Date()');
    if (!ts.isPropertyAccessExpression(node)) return;
    const owner = node.expression.getText().replace(/^globalThis\./, '');
    const member = `${owner}.${node.name.text}`;
    if (IMPURE_MEMBERS.has(member) || owner === 'console') found(member);
  });
}

/** Pieces of text that a person may come to read (strings, templates, words between tags) which match `forbidden`. */
export function spokenWords(path: string, text: string, forbidden: RegExp): Finding[] {
  return visit(path, text, (node, found) => {
    const spoken = ts.isStringLiteralLike(node) || ts.isTemplateLiteralToken(node) || ts.isJsxText(node);
    if (!spoken || ts.isImportDeclaration(node.parent) || ts.isExportDeclaration(node.parent)) return;
    const word = forbidden.exec(node.text)?.[0];
    if (word) found(`"${word}" in "${node.text.trim().slice(0, 80)}"`);
  });
}

/** True when the text exports something that runs, not types alone. */
export function exportsValues(text: string): boolean {
  return /^export (default |async |abstract )*(function|const|class|let)\b/m.test(text);
}
