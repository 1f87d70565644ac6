import pg from 'pg';

/** One statement on a connection of its own. */
export async function ask(address: string, sql: string): Promise<pg.QueryResult> {
  const client = new pg.Client({ connectionString: address });
  await client.connect();
  try {
    return await client.query(sql);
  } finally {
    await client.end();
  }
}
