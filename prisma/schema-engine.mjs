// Prisma's schema engine as WebAssembly: the native one would be a download. Its table, checksums and folders are
// Prisma's own, so plain `npx prisma migrate deploy|status` works on the same database.
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { bindMigrationAwareSqlAdapterFactory } from '@prisma/driver-adapter-utils';

const require = createRequire(import.meta.url);
let loaded;

/** Loads the engine by hand: Node 20 does not import `.wasm` files. */
async function engineModule() {
  loaded ??= (async () => {
    const glue = await import('@prisma/schema-engine-wasm/schema_engine_bg');
    const file = require.resolve('@prisma/schema-engine-wasm/schema_engine_bg').replace(/\.js$/, '.wasm');
    const { instance } = await WebAssembly.instantiate(await readFile(file), { './schema_engine_bg.js': glue });
    glue.__wbg_set_wasm(instance.exports);
    instance.exports.__wbindgen_start();
    return glue;
  })();
  return loaded;
}

/**
 * Runs `use(engine)` on the databases that `factory` opens and closes every connection afterwards: the engine never
 * does, and on SQLite an open one keeps the file locked for the rest of the process.
 */
export async function withEngine({ factory, schema }, use) {
  const { SchemaEngine } = await engineModule();
  const open = [];
  const remember = async (opening) => {
    const connection = disposedOnce(withScripts(await opening));
    open.push(connection);
    return connection;
  };
  const watched = {
    provider: factory.provider,
    adapterName: factory.adapterName,
    connect: () => remember(factory.connect()),
    connectToShadowDb: () => remember(factory.connectToShadowDb()),
  };
  try {
    const datamodels = [['schema.prisma', schema]];
    return await use(await SchemaEngine.new({ datamodels }, () => {}, bindMigrationAwareSqlAdapterFactory(watched)));
  } finally {
    for (const connection of open) await connection.dispose();
  }
}

/** The engine hands whole migration files to executeRaw, while drivers take one statement there. */
function withScripts(connection) {
  const executeRaw = connection.executeRaw.bind(connection);
  connection.executeRaw = async (query) => {
    if (query.args.length > 0) return executeRaw(query);
    await connection.executeScript(query.sql);
    return 0;
  };
  return connection;
}

/** The engine closes the connection it replayed migrations on; a second closing would throw. */
function disposedOnce(connection) {
  const dispose = connection.dispose.bind(connection);
  let disposed;
  connection.dispose = () => (disposed ??= dispose());
  return connection;
}
