const YEAR_SECONDS = 365 * 24 * 60 * 60;

/** What every answer says of itself, page, data or file: it is of the type it names, shows in no frame, and keeps its address from other sites. */
export function commonHeaders(https: boolean): Readonly<Record<string, string>> {
  return {
    'x-content-type-options': 'nosniff',
    'x-frame-options': 'DENY',
    'referrer-policy': 'same-origin',
    'permissions-policy': 'camera=(), microphone=(), geolocation=()',
    'cross-origin-opener-policy': 'same-origin',
    ...(https ? { 'strict-transport-security': `max-age=${YEAR_SECONDS}; includeSubDomains` } : {}),
  };
}
