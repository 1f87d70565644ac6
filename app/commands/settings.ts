import { SettingsError, settings } from '../server/settings';

// Run by `npm start` before it builds: a wrong setting should not cost a minute.
try {
  settings();
} catch (error) {
  if (!(error instanceof SettingsError)) throw error;
  process.stderr.write(`${error.message}\n`);
  process.exitCode = 2;
}
