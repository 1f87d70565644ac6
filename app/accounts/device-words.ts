/** The first that fits: most browsers also give the name of an older one. */
const BROWSERS = [
  ['Edge', /\bEdg(A|iOS)?\//],
  ['Opera', /\bOPR\//],
  ['Samsung Internet', /\bSamsungBrowser\//],
  ['Firefox', /\b(Firefox|FxiOS)\//],
  ['Chrome', /\b(Headless)?(Chrome|CriOS)\//],
  ['Safari', /\bSafari\//],
] as const;

const SYSTEMS = [
  ['iPhone', /\biPhone\b/],
  ['iPad', /\biPad\b/],
  ['Android', /\bAndroid\b/],
  ['Chromebook', /\bCrOS\b/],
  ['Windows', /\bWindows\b/],
  ['Mac', /\bMacintosh\b/],
  ['Linux', /\bLinux\b/],
] as const;

const MOST_READ = 300;

/** What a person knows a device by, such as 'Firefox on Android'. No more than this is kept of what a browser says of itself. */
export function deviceWords(headers: Headers): string {
  const agent = (headers.get('user-agent') ?? '').slice(0, MOST_READ);
  const [browser] = BROWSERS.find(([, pattern]) => pattern.test(agent)) ?? ['A browser'];
  const [system] = SYSTEMS.find(([, pattern]) => pattern.test(agent)) ?? [];
  return system ? `${browser} on ${system}` : browser;
}
