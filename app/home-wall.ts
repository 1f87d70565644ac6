import type { Brief } from '../lib/generate/brief';

/** The wall of the start page. It is sound (a test says so): it shows what good looks like. */
export const HOME_WALL: Brief = {
  topic: 'mixed',
  kind: 'window-panel',
  difficulty: 1,
  rules: 'canada',
  seed: 8,
};
