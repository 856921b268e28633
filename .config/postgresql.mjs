// A PostgreSQL server of our own for the tests, in a folder of its own, gone when they end.
import { execFileSync, spawnSync } from 'node:child_process';
import { chmodSync, chownSync, existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Folder with initdb and pg_ctl, the newest version installed, or null. */
export function programsFolder() {
  const onPath = (process.env.PATH ?? '').split(':');
  const debian = '/usr/lib/postgresql';
  const versions = existsSync(debian) ? readdirSync(debian).sort((a, b) => Number(b) - Number(a)) : [];
  const candidates = [...versions.map((v) => join(debian, v, 'bin')), ...onPath];
  return candidates.find((folder) => existsSync(join(folder, 'initdb')) && existsSync(join(folder, 'pg_ctl'))) ?? null;
}

/**
 * Starts a server on 127.0.0.1 with a database `app`.
 * @returns `{ url, version, stop }`
 * @throws Error with the program's own words when it does not start
 */
export async function startPostgresql(programs) {
  const folder = mkdtempSync(join(tmpdir(), 'stillroom-pg-'));
  const data = join(folder, 'data');
  const port = await freePort();
  // PostgreSQL refuses to run as root: there the user that its package made runs it.
  const user = process.getuid?.() === 0 ? postgresUser() : {};
  mkdirSync(data);
  chmodSync(folder, 0o755);
  if (user.uid !== undefined) chownSync(data, user.uid, user.gid);
  const run = (program, args) => {
    const ended = spawnSync(join(programs, program), args, {
      ...user,
      cwd: folder,
      encoding: 'utf8',
      env: { PATH: process.env.PATH, LC_ALL: 'C.UTF-8' },
    });
    if (ended.status !== 0)
      throw new Error(
        `${program} failed: ${(ended.stderr || ended.stdout || ended.error?.message || '').trim().slice(0, 500)}`,
      );
    return ended.stdout;
  };
  const stop = () => {
    spawnSync(join(programs, 'pg_ctl'), ['-D', data, '-m', 'immediate', 'stop'], {
      ...user,
      cwd: folder,
      stdio: 'ignore',
    });
    rmSync(folder, { recursive: true, force: true });
  };
  try {
    run('initdb', ['-D', data, '-U', 'app', '--auth=trust', '-E', 'UTF8', '--locale=C.UTF-8']);
    const options = `-p ${port} -c listen_addresses=127.0.0.1 -c unix_socket_directories=${data} -c fsync=off`;
    run('pg_ctl', ['-D', data, '-o', options, '-l', join(data, 'log'), '-w', 'start']);
    const version = run('postgres', ['--version']).trim();
    return { url: `postgresql://app@127.0.0.1:${port}/postgres`, version, stop };
  } catch (error) {
    stop();
    throw error;
  }
}

function postgresUser() {
  const id = (flag) => Number(execFileSync('id', [flag, 'postgres'], { encoding: 'utf8' }));
  return { uid: id('-u'), gid: id('-g') };
}

function freePort() {
  return new Promise((resolve, reject) => {
    const server = createServer().once('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const { port } = server.address();
      server.close(() => resolve(port));
    });
  });
}
