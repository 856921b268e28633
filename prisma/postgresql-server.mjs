// PostgreSQL as the schema engine needs it.
import { PrismaPg } from '@prisma/adapter-pg';

/**
 * A factory with one session per connection (the engine's advisory lock belongs to a session) that sends a migration
 * file as one query. The stock adapter cuts it at every semicolon, also inside text, and a failure in the middle would
 * leave half of it; sent whole, PostgreSQL makes it one transaction.
 */
export function postgresqlServer(url) {
  const factory = new PrismaPg({ connectionString: url, max: 1 });
  const connect = async () => {
    const connection = await factory.connect();
    connection.executeScript = async (script) => {
      await connection.client.query(script).catch((error) => connection.onError(error));
    };
    return connection;
  };
  return { provider: factory.provider, adapterName: factory.adapterName, connect, connectToShadowDb: refuseShadow };
}

/** A shadow database would be made on the real server; scratch databases are for that. */
async function refuseShadow() {
  throw new Error('No shadow database on a real server: use a scratch database.');
}
