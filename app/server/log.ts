import pino, { type LoggerOptions } from 'pino';

/** Fields that never reach the log, wherever they stand. */
const SECRET_FIELDS = [
  'password',
  'pin',
  'secret',
  'token',
  'cookie',
  'authorization',
  'joinCode',
  'startCode',
  'email',
  'name',
];

export const LOG_OPTIONS: LoggerOptions = {
  base: { pid: process.pid },
  timestamp: pino.stdTimeFunctions.isoTime,
  redact: {
    paths: SECRET_FIELDS.flatMap((field) => [field, `*.${field}`, `*.*.${field}`]),
    censor: '[left out]',
  },
};

/** One JSON line an event on stderr: what, when, who by id. No secrets, no names, no addresses of people. */
export const log = pino(LOG_OPTIONS, pino.destination({ dest: 2, sync: true }));
