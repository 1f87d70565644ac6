// The yardstick of the hand-in bench: bare Node, one durable SQLite insert a request. Arguments: file, port.
import { createServer } from 'node:http';

const [, , file, port] = process.argv;
const builtIn = process.getBuiltinModule('node:sqlite');
const database = builtIn
  ? new builtIn.DatabaseSync(file)
  : new (await import('better-sqlite3')).default(file);
database.exec('pragma journal_mode = WAL; pragma synchronous = FULL; create table hand_in (body text)');
const insert = database.prepare('insert into hand_in values (?)');

createServer((request, response) => {
  const chunks = [];
  request.on('data', (chunk) => chunks.push(chunk));
  request.on('end', () => {
    insert.run(Buffer.concat(chunks).toString('utf8'));
    response.writeHead(201, { 'content-type': 'application/json' }).end('{"ok":true}');
  });
}).listen(Number(port), '127.0.0.1');
