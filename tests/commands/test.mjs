import { runChecks } from './checks.mjs';
import { runCommand } from './steps.mjs';

await runCommand(() => runChecks({ browser: true }));
