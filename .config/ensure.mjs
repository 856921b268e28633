// Everything that must be there before the program or its tests can run. Each step looks first whether its result is
// up to date, so a second start does nothing. Node builtins only.
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { inProject, onWindows, projectFolder } from './environment.mjs';
import { runNode, runProgram } from './run-program.mjs';

/** A failure whose message tells the reader what to do. */
export class SetUpError extends Error {}

const NEXT = inProject('node_modules', 'next', 'dist', 'bin', 'next');
const PRISMA = inProject('node_modules', 'prisma', 'build', 'index.js');

/** Refuses a Node that the framework does not run on. */
export function ensureNode() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  if (major > 20 || (major === 20 && minor >= 9)) return;
  throw new SetUpError(
    `Node ${process.versions.node} is too old: install Node 20.9 or newer (22 or 24 will do as well).`,
  );
}

/** Installs the packages of package-lock.json unless exactly these are there. @returns true when it did something */
export async function ensureInstalled(say) {
  if (isInstalled()) return false;
  say('Installing packages (once; a minute or two) …');
  const args = ['ci', '--ignore-scripts', '--include=dev', '--no-audit', '--no-fund'];
  const npm = process.env.npm_execpath;
  const { code } = npm?.endsWith('.js')
    ? await runNode([npm, ...args])
    : await runProgram(onWindows ? 'npm.cmd' : 'npm', args);
  if (code === 0) return true;
  throw new SetUpError(
    'The packages could not be installed. Look at the message of npm above: mostly the network, a full disk, or a folder that may not be written. Then run the same command again.',
  );
}

function isInstalled() {
  const hidden = inProject('node_modules', '.package-lock.json');
  if (!existsSync(hidden) || !existsSync(NEXT) || !existsSync(PRISMA)) return false;
  const read = (path) => JSON.parse(readFileSync(path, 'utf8')).packages;
  const there = read(hidden);
  const wanted = Object.entries(read(inProject('package-lock.json'))).filter(([path, p]) => path && !p.optional);
  return wanted.every(([path, { version }]) => there[path]?.version === version);
}

/** Generates both database clients when a schema has changed. @returns true when it did something */
export async function ensureGenerated(say) {
  const stamp = inProject('prisma', 'generated', '.stamp');
  const schemas = ['prisma/schema.prisma', 'prisma/postgresql/schema.prisma'];
  const wanted = hashOf([...schemas, 'package-lock.json', '.config/prisma.ts']);
  if (readOr(stamp) === wanted) return false;
  say('Generating the database clients …');
  rmSync(stamp, { force: true });
  for (const schema of schemas) {
    const { code, output } = await runNode([PRISMA, 'generate', '--schema', schema], { quiet: true });
    if (code !== 0)
      throw new SetUpError(
        `${output}\nThe database client for ${schema} could not be generated: correct the schema named above.`,
      );
  }
  writeFileSync(stamp, wanted);
  return true;
}

const BUILD_INPUTS = [
  'app',
  'components',
  'lib',
  'prisma/schema.prisma',
  'next.config.mjs',
  'package.json',
  'package-lock.json',
  'tsconfig.json',
];

/** Builds the program when a source has changed. @returns true when it did something */
export async function ensureBuilt(say) {
  const stamp = inProject('.next', 'stillroom-build');
  const wanted = hashOf(BUILD_INPUTS);
  if (readOr(stamp) === wanted && existsSync(inProject('.next', 'BUILD_ID'))) return false;
  say('Building (half a minute or so) …');
  rmSync(stamp, { force: true });
  const { code, output } = await runNode([NEXT, 'build'], { quiet: true, env: { NODE_ENV: 'production' } });
  if (code !== 0)
    throw new SetUpError(
      `${output}\nThe build failed: correct what Next names above, then run the same command again.`,
    );
  writeFileSync(stamp, wanted);
  return true;
}

const readOr = (path) => (existsSync(path) ? readFileSync(path, 'utf8') : null);

/** One hash over files and whole folders, and the Node that will run what is made of them. */
function hashOf(paths) {
  const hash = createHash('sha256').update(process.versions.node.split('.')[0]);
  for (const path of paths.flatMap(filesUnder))
    hash.update(`\0${path}\0`).update(readFileSync(join(projectFolder, path)));
  return hash.digest('hex');
}

function filesUnder(path) {
  const absolute = join(projectFolder, path);
  if (!existsSync(absolute)) return [];
  try {
    const entries = readdirSync(absolute, { withFileTypes: true }).sort((a, b) => (a.name < b.name ? -1 : 1));
    return entries.flatMap((e) => (e.isDirectory() ? filesUnder(`${path}/${e.name}`) : [`${path}/${e.name}`]));
  } catch (error) {
    if (error.code === 'ENOTDIR') return [path];
    throw error;
  }
}
