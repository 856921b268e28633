// The production build on a database of its own, for one run of the browser tests. Playwright starts and stops it.
// E2E_DATABASE_URL puts it on another database (an empty PostgreSQL one, say); it is then left as the tests leave it.
import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { deploy } from '../prisma/deploy.mjs';

const projectFolder = dirname(dirname(fileURLToPath(import.meta.url)));
const port = process.env.E2E_PORT ?? '3917';

if (!existsSync(join(projectFolder, '.next', 'BUILD_ID'))) {
  console.error('There is no build yet: run npm start or npm test once.');
  process.exit(1);
}

const folder = mkdtempSync(join(tmpdir(), 'stillroom-e2e-'));
const url = process.env.E2E_DATABASE_URL ?? `file:${join(folder, 'stillroom.db')}`;
await deploy(url);

const next = join(projectFolder, 'node_modules', 'next', 'dist', 'bin', 'next');
const server = spawn(process.execPath, [next, 'start', '--keepAliveTimeout', '75000', '-H', '127.0.0.1', '-p', port], {
  cwd: projectFolder,
  env: { ...process.env, NODE_ENV: 'production', DATABASE_URL: url, NEXT_TELEMETRY_DISABLED: '1' },
  stdio: ['ignore', 'ignore', 'inherit'],
});

for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => server.kill('SIGTERM'));
process.on('exit', () => {
  server.kill('SIGKILL');
  rmSync(folder, { recursive: true, force: true });
});
server.on('exit', (code) => process.exit(code ?? 0));
