import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { exportsValues, filesUnder, impurities, spokenWords, textOf } from '#test/support/source-scan.ts';

/** What an import graph cannot see; the arrows themselves are in .dependency-cruiser.cjs. */
const PURE_ROOMS = ['units', 'reference', 'science', 'batch', 'ledger', 'plan', 'forecast', 'labels', 'demo'];
const CODE = /\.tsx?$/;
const none: string[] = [];

describe('the pure rooms', () => {
  it('read no clock, no chance and no environment, and write to no console', () => {
    const files = PURE_ROOMS.flatMap((room) => filesUnder(`lib/${room}`, CODE));
    assert.ok(files.length > 20, `only ${files.length} files were read`);
    assert.deepEqual(
      files.flatMap((path) => impurities(path, textOf(path))),
      none,
    );
  });

  it('would be caught doing so', () => {
    const planted = [
      'const a = Date.now();',
      'const b = new Date();',
      'const c = Math.random();',
      'const d = process.env.HOME;',
      "console.log('x');",
      'const e = globalThis.crypto.randomUUID();',
      'const f = Date();',
    ];
    for (const line of planted) assert.equal(impurities('planted.ts', line).length, 1, line);
    const innocent =
      "// Date.now() and new Date()\nconst a = 'Math.random()'; const b = new Date(0); const c = Date.UTC(2026, 0);";
    assert.deepEqual(impurities('innocent.ts', innocent), none);
  });
});

describe('a file of the science room', () => {
  const files = filesUnder('lib/science', CODE).filter((path) => exportsValues(textOf(path)));

  it('is one of several', () => {
    assert.ok(files.length > 5, `only ${files.length} files were read`);
  });

  it('has a test of its own name', () => {
    const tests = new Set(filesUnder('test/science', CODE));
    assert.deepEqual(
      files.filter((path) => !tests.has(path.replace(/^lib(.*)\.ts$/, 'test$1.test.ts'))),
      none,
    );
  });

  it('names its source, or says that there is none', () => {
    const source = /\bsources?\b|common practice|from memory|\bestimate|\bdefinition\b/i;
    assert.deepEqual(
      files.filter((path) => !source.test(textOf(path))),
      none,
    );
  });
});

describe('text that a keeper reads', () => {
  const FORBIDDEN = /\b(safe|safely|safer|probably|likely)\b(?!-)/i;

  it('never says that something is safe, probable or likely', () => {
    const files = ['app', 'components', 'lib', 'prisma', '.config'].flatMap((folder) =>
      filesUnder(folder, /\.(tsx?|mjs)$/),
    );
    assert.ok(files.length > 50, `only ${files.length} files were read`);
    assert.deepEqual(
      files.flatMap((path) => spokenWords(path, textOf(path), FORBIDDEN)),
      none,
    );
  });

  it('would be caught saying so, while identifiers and comments are free', () => {
    const planted = [
      "const a = 'This jar is safe.';",
      'const b = `' + '$' + '{n} jars will Probably do`;',
      'const c = <p>most likely set</p>;',
    ];
    for (const line of planted) assert.equal(spokenWords('planted.tsx', line, FORBIDDEN).length, 1, line);
    const innocent =
      "// is it safe?\nimport { safe } from './safe.ts';\nconst safe = unsafe.likely; const a = 'food safety, env(safe-area-inset-top)';";
    assert.deepEqual(spokenWords('innocent.tsx', innocent, FORBIDDEN), none);
  });
});

describe('the database', () => {
  const TABLE =
    /\b(db|tx)\.(place|kitchen|storeRoom|crop|planting|lot|act|movement|batch|reading|plan|forecast|useRate)\b/;

  it('is asked by the store alone, though a use case may open a transaction', () => {
    const others = ['lib/usecases', 'app'].flatMap((folder) => filesUnder(folder, /\.tsx?$/));
    assert.ok(others.length > 60, `only ${others.length} files were read`);
    assert.deepEqual(
      others.filter((path) => TABLE.test(textOf(path))),
      [],
    );
    assert.ok(TABLE.test('await tx.lot.findMany()'));
  });
});

describe('the project folder', () => {
  const texts = filesUnder('.', /\.(tsx?|mjs|cjs|json|css|md|yml|prisma|sql|toml|svg)$|\/run$|\/\.[a-z]+$/).filter(
    (path) => path !== 'test/architecture.test.ts',
  );
  const matching = (pattern: RegExp): string[] =>
    texts.flatMap((path) => {
      const found = pattern.exec(textOf(path))?.[0];
      return found ? [`${path}: ${found}`] : [];
    });

  it('names no folder of anybody’s machine', () => {
    assert.ok(texts.length > 100, `only ${texts.length} files were read`);
    assert.deepEqual(matching(/(?<![\w.])(\/(work|home|root|Users)\/[a-z]\w*|[A-Z]:\\+Users\\+\w+)/), none);
  });

  it('names no package registry, so that each reader’s own is used', () => {
    assert.deepEqual(matching(/registry\.(npmjs|yarnpkg)|"resolved": *"http|\/artifactory\/|_authToken/), none);
  });

  it('has nothing at its top level but what belongs there', () => {
    const top = new Set(texts.filter((path) => !path.includes('/') && !path.startsWith('.')));
    const allowed = [
      'package.json',
      'package-lock.json',
      'tsconfig.json',
      'next.config.mjs',
      'README.md',
      'DEVELOPERS.md',
    ];
    assert.deepEqual(
      [...top].filter((path) => !allowed.includes(path)),
      none,
    );
  });
});
