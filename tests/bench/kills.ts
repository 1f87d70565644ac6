import { killSite } from '../kills/kill-site';

/** tests/commands/bench.mjs builds the site first. */
export const needsBuild = true;

/** Two hundred kills of the built site on SQLite; a hundred on PostgreSQL, half of them of the database. Takes the better part of an hour. */
export async function run(): Promise<void> {
  for (const [kind, kills] of [
    ['sqlite', { site: 200, database: 0 }],
    ['postgres', { site: 50, database: 50 }],
  ] as const) {
    const { acknowledged, lost, halfWritten, trailIsWhole } = await killSite(kind, kills);
    const held = lost.length + halfWritten.length === 0 && trailIsWhole;
    console.log(
      `${kind}: ${kills.site} kills of the site, ${kills.database} of the database: ${acknowledged} hand-ins acknowledged, ` +
        `${lost.length} lost, ${halfWritten.length} half written, trail ${trailIsWhole ? 'whole' : 'BROKEN'}: ${held ? 'held' : 'NOT HELD'}`,
    );
  }
}
