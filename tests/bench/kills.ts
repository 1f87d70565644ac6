import { killSite } from '../kills/kill-site';

/** tests/commands/bench.mjs builds the site first. */
export const needsBuild = true;

/** Kills between two lines that say how far it is. */
const TOLD_EVERY = 10;

/** Two hundred kills of the built site on SQLite; a hundred on PostgreSQL, half of them of the database. Takes the better part of an hour. */
export async function run(): Promise<void> {
  for (const [kind, kills] of [
    ['sqlite', { site: 200, database: 0 }],
    ['postgres', { site: 50, database: 50 }],
  ] as const) {
    const begun = performance.now();
    const minutes = () => `${((performance.now() - begun) / 60_000).toFixed(1)} minutes`;
    const tell = (done: number, acknowledged: number) => {
      if (done % TOLD_EVERY === 0)
        console.log(`${kind}: ${done} kills, ${acknowledged} hand-ins acknowledged, ${minutes()}`);
    };
    const { acknowledged, lost, halfWritten, trailIsWhole } = await killSite(kind, kills, tell);
    const held = lost.length + halfWritten.length === 0 && trailIsWhole;
    console.log(
      `${kind}: ${kills.site} kills of the site, ${kills.database} of the database: ${acknowledged} hand-ins acknowledged, ` +
        `${lost.length} lost, ${halfWritten.length} half written, trail ${trailIsWhole ? 'whole' : 'BROKEN'}, ${minutes()}: ${held ? 'held' : 'NOT HELD'}`,
    );
  }
}
