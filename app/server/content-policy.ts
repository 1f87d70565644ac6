import { createHash } from 'node:crypto';
import { FRAME_SCRIPT } from '../frame/frame-script';

/** How a policy names an inline script that may run. */
export function hashSource(script: string): string {
  return `'sha256-${createHash('sha256').update(script).digest('base64')}'`;
}

/** The one inline script of ours, in the head of every page. */
const FRAME_SOURCE = hashSource(FRAME_SCRIPT);

/**
 * What a page may load and run: scripts and styles of this site, and the inline scripts named. Style attributes are let in (the
 * drawings set custom properties with them); style elements are not. `developing` adds what `next dev` cannot do without.
 */
export function contentPolicy(
  inlineScripts: readonly string[],
  { https, developing }: { readonly https: boolean; readonly developing: boolean },
): string {
  return [
    "default-src 'self'",
    `script-src ${[...new Set(["'self'", FRAME_SOURCE, ...inlineScripts, ...(developing ? ["'unsafe-eval'"] : [])])].join(' ')}`,
    developing ? "style-src 'self' 'unsafe-inline'" : "style-src 'self'; style-src-attr 'unsafe-inline'",
    "img-src 'self' data: blob:",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'self'",
    "frame-ancestors 'none'",
    ...(https ? ['upgrade-insecure-requests'] : []),
  ].join('; ');
}
