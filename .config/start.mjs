// `npm start`: install, generate and build what is missing, bring the data up to date, serve. Node builtins only.
import { spawn } from 'node:child_process';
import { networkInterfaces } from 'node:os';
import { ensureBuilt, ensureGenerated, ensureInstalled, ensureNode } from './ensure.mjs';
import { childEnvironment, databaseUrl, inProject, loadDotEnv, projectFolder } from './environment.mjs';
import { freePort } from './free-port.mjs';
import { runNode } from './run-program.mjs';

const say = (text) => console.log(text);

async function main() {
  loadDotEnv();
  stopWithNpm();
  ensureNode();
  const port = wantedPort();
  await ensureInstalled(say);
  await ensureGenerated(say);
  await ensureBuilt(say);
  await bringDataUpToDate();
  await serve(process.env.HOST?.trim() || '127.0.0.1', port);
}

function wantedPort() {
  const text = process.env.PORT?.trim() || '3000';
  const port = Number(text);
  if (Number.isInteger(port) && port > 0 && port < 65_536) return port;
  throw new Error(`PORT must be a number from 1 to 65535, not "${text}".`);
}

async function bringDataUpToDate() {
  const { code } = await runNode(['prisma/migrate.mjs', 'deploy'], { env: { DATABASE_URL: databaseUrl() } });
  if (code !== 0) throw new Error('The data was not opened, for the reason above.');
}

async function serve(host, wanted) {
  const port = await freePort(wanted, host);
  if (port !== wanted)
    say(`Port ${wanted} is taken, perhaps by a Stillroom that is running already. Taking ${port} instead.`);
  const next = inProject('node_modules', 'next', 'dist', 'bin', 'next');
  const server = spawn(
    process.execPath,
    [next, 'start', '--keepAliveTimeout', '75000', '-H', host, '-p', String(port)],
    {
      cwd: projectFolder,
      env: childEnvironment({ NODE_ENV: 'production', DATABASE_URL: databaseUrl() }),
      stdio: ['ignore', 'pipe', 'inherit'],
    },
  );
  stopTogether(server);
  const address = `http://${host === '0.0.0.0' || host === '::' ? '127.0.0.1' : host}:${port}`;
  // Next's own banner is held back: it would name the address a second time.
  let ready = false;
  server.stdout.on('data', (chunk) => ready && process.stdout.write(chunk));
  await untilAnswers(address, server);
  ready = true;
  say(`Stillroom is ready: ${address}`);
  if (host === '0.0.0.0')
    for (const other of otherAddresses()) say(`On another device in this network: http://${other}:${port}`);
  say('Stop it with Ctrl-C.');
  openBrowser(address);
}

/** Resolves when the server answers anything at all. */
async function untilAnswers(address, server) {
  for (let tries = 0; tries < 300 && server.exitCode === null; tries += 1) {
    const answer = await fetch(`${address}/icon.svg`, { signal: AbortSignal.timeout(5000) }).catch(() => null);
    if (answer) return;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  server.kill();
  throw new Error(
    'The server did not start, for the reason above. If nothing stands there, delete the folder .next and run npm start again.',
  );
}

/** The server ends with us and we end with it. */
function stopTogether(server) {
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => server.kill('SIGTERM'));
  process.on('exit', () => server.kill('SIGKILL'));
  server.on('exit', (code, signal) => process.exit(signal ? 0 : (code ?? 1)));
}

/** npm starts us through a shell that does not pass its own ending on, so we watch for a new parent. */
function stopWithNpm() {
  if (!process.env.npm_lifecycle_event) return;
  const parent = process.ppid;
  setInterval(() => process.ppid !== parent && process.kill(process.pid, 'SIGTERM'), 1000).unref();
}

const otherAddresses = () =>
  Object.values(networkInterfaces()).flatMap((all) =>
    (all ?? []).flatMap((a) => (a.family === 'IPv4' && !a.internal ? [a.address] : [])),
  );

/** A convenience for the person at the keyboard; whatever goes wrong here does not matter. */
function openBrowser(address) {
  if (
    !process.stdin.isTTY ||
    !process.stdout.isTTY ||
    process.env.CI ||
    process.env.SSH_CONNECTION ||
    process.env.BROWSER === 'none'
  )
    return;
  const [program, ...args] = { darwin: ['open'], win32: ['cmd', '/c', 'start', ''] }[process.platform] ?? ['xdg-open'];
  spawn(program, [...args, address], { stdio: 'ignore', detached: true })
    .on('error', () => {})
    .unref();
}

main().catch((error) => {
  console.error(`\n${error.message}`);
  process.exit(1);
});
