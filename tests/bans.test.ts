import { describe, expect, test } from 'vitest';
import { codeOf } from './code-of';
import { filesUnder, importsOf, isScript, placesOf } from './source-files';

const all = filesUnder('.');
const scripts = all.filter(isScript);
const within = (...folders: readonly string[]) =>
  scripts.filter(({ path }) => folders.some((folder) => path === folder || path.startsWith(`${folder}/`)));

const lib = within('lib');
/** lib/store talks to files and databases: the one room of lib that is not pure. */
const pure = lib.filter(({ path }) => !path.startsWith('lib/store/'));
const exact = within(
  'lib/geometry',
  'lib/generate',
  'lib/wall',
  'lib/inspect',
  'lib/failing',
  'lib/mechanisms',
  'lib/marking',
);
const house = within('lib', 'components', 'app');
const tests = within('tests');

/** Without these two lists a ban whose folder was moved would pass for ever. */
test('the bans have something to look at', () => {
  expect(exact.length).toBeGreaterThan(10);
  expect(tests.length).toBeGreaterThan(10);
});

describe('bit for bit: engines differ in the last bit of these', () => {
  // An allow-list: what a later language adds to Math is banned until someone has measured it.
  const EXACT = 'abs|ceil|floor|fround|imul|max|min|round|sign|sqrt|trunc';
  test('Math', () => {
    expect(placesOf(exact, new RegExp(`\\bMath\\b(?!\\.(${EXACT})\\b)`))).toEqual([]);
  });
  test('powers', () => {
    expect(placesOf(exact, /\*\*/)).toEqual([]);
  });
  test('no nearly equal: lengths on the grid are equal or not', () => {
    const ruled = [
      ...within('lib/wall', 'lib/generate', 'lib/inspect'),
      ...within('tests/lib/wall', 'tests/lib/generate', 'tests/lib/inspect'),
    ];
    expect(placesOf(ruled, /\bEPS\b|epsilon|toBeCloseTo/i)).toEqual([]);
  });
});

describe('lib is pure, but for the store', () => {
  test.each([
    ['clock', /\bDate\b|\bperformance\b|\bsetTimeout\b|\bsetInterval\b/],
    ['chance', /\bMath\.random\b|\bcrypto\b/],
    // The browser's window and document are left to the linter, which can tell them from a wall's window.
    ['environment', /\bprocess\b|\bglobalThis\b/],
    ['console', /\bconsole\b/],
    ['network', /\bfetch\b|\bXMLHttpRequest\b|\bWebSocket\b/],
  ])('no %s', (_, pattern) => {
    expect(placesOf(pure, pattern)).toEqual([]);
  });

  test.each([
    ['console', /\bconsole\b/],
    ['chance that can be guessed', /\bMath\.random\b/],
    ['first words that say nothing', /\bfunction (get|handle|process|do)[A-Z]/],
  ])('nor has the store %s', (_, pattern) => {
    expect(placesOf(lib, pattern)).toEqual([]);
  });

  test('no classes but errors', () => {
    expect(placesOf(house, /\bclass\s+\w+(?!\w)(?!\s+extends\s+\w*Error\b)/)).toEqual([]);
  });
});

describe('one place for one thing', () => {
  test('inches become millimetres in lib/units.ts', () => {
    const places = placesOf(house, /\b25\.4\b/).map((place) => place.replace(/:\d+$/, ''));
    expect([...new Set(places)]).toEqual(['lib/units.ts']);
  });
  test('screen points become wall points in components/wall/to-screen.ts', () => {
    const elsewhere = house.filter(({ path }) => path !== 'components/wall/to-screen.ts');
    expect(placesOf(elsewhere, /\bgetScreenCTM\b/)).toEqual([]);
  });
  test('pages ask only this site, and the server asks nobody but its database and its own page makers', () => {
    const asking = [
      ...placesOf(house, /\bfetch\(/),
      ...house.flatMap(({ path, text }) =>
        importsOf(text).some(({ from }) => /^(node:)?(https?|http2|net|tls|dgram|undici)$/.test(from)) &&
        !path.startsWith('app/serve/')
          ? [path]
          : [],
      ),
    ].map((place) => place.replace(/:\d+$/, ''));
    // Of app/request: what an address looks like, and the type of a request.
    expect([...new Set(asking)].sort()).toEqual([
      'app/desk/work/[work]/show/show.tsx',
      'app/my-work/use-walls.ts',
      'app/request/address.ts',
      'app/request/peer-address.ts',
      'app/search/search-room.tsx',
      'app/walls/[code]/site-answers.ts',
      'components/hand-in/hand-in.ts',
      'components/lesson/questions-slot.tsx',
      'components/ui/send-fields.ts',
    ]);
    expect(placesOf(within('app/serve'), /\brequest\(/).map((place) => place.replace(/:\d+$/, ''))).toEqual([
      'app/serve/page-makers.ts',
    ]);
  });
  test('what comes from outside is parsed at the borders', () => {
    const parsers = scripts.filter(({ text }) => importsOf(text).some(({ from }) => /^zod(\/|$)/.test(from)));
    expect(
      parsers
        .map(({ path }) => path)
        .filter((path) => !/^(lib\/wall|lib\/exercise|lib\/store|app)\//.test(path)),
    ).toEqual([]);
  });
});

describe('tests can fail', () => {
  test.each([
    ['left out', /\b(test|it|describe)(\.\w+)*\.(skip|todo|skipIf|runIf)\b|\bx(it|test|describe)\(/],
    ['alone', /\b(test|it|describe)(\.\w+)*\.only\b/],
    // A blanked message leaves a space between the brackets.
    ['content with any error', /(?<!\.not)\.(toThrow|toThrowError)\(\)/],
    ['content that something is there', /\.(toBeDefined|toBeTruthy)\(/],
    ['deaf to our own modules', /\bvi\.(mock|doMock)\b/],
  ])('none is %s', (_, pattern) => {
    expect(placesOf(tests, pattern)).toEqual([]);
  });

  test('none fails because the machine is busy: limits that end what hangs stand in vitest.config.ts', () => {
    const cases = tests.filter(({ path }) => /\.(test|e2e)\.\w+$/.test(path));
    expect(placesOf(cases, /\btimeout:|\bvi\.setConfig\b|\bperformance\.now\b|\}, [\d_]{4,}\)/)).toEqual([]);
  });
});

describe('words', () => {
  // Put together from pieces, so that this file does not find itself.
  const joined = (...pieces: readonly string[]) => new RegExp(pieces.join(''), 'i');
  test.each([
    ['talk written down', joined('tran', 'script')],
    ['paper the work began with', joined('seed', '[ -]doc', 'ument')],
    ['folder of one machine', joined('(^|[\\s"\'`(=:])', '/(work|tmp|root|home|mnt|Users)', '/')],
    ['package host', joined('regis', 'try\\.[a-z-]+\\.[a-z]+|npm', 'js\\.|pypi', '\\.|deb', '\\.debian')],
    ['work left for later', joined('\\b(TO', 'DO|FIX', 'ME)', ':')],
  ])('no %s', (_, pattern) => {
    const places = all.flatMap(({ path, text }) =>
      text.split('\n').flatMap((line, index) => (pattern.test(line) ? [`${path}:${index + 1}`] : [])),
    );
    expect(places).toEqual([]);
  });
});

describe('what stands in comments, quotes and patterns is not code', () => {
  test.each([
    ['a(); // Date', 'a();  '],
    ['/* Math.sin\n */ b', ' \n b'],
    ["c('x // y') ** d", 'c( ) ** d'],
    [['f(`Date $', "{g({ h: 1 }) ** 2} it's`) ** 3"].join(''), 'f( g({ h: 1 }) ** 2 ) ** 3'],
    ["k.replace(/['`/]/g, '') ** 2", 'k.replace( ,  ) ** 2'],
    ['(a + b) / c / d ** 2', '(a + b) / c / d ** 2'],
  ])('%s', (text, code) => {
    expect(codeOf(text)).toBe(code);
  });
});

test('imports are read in every form', () => {
  const text = [
    "import 'a';",
    "import type { B } from 'b';",
    "import c, {\n  d,\n} from 'c';",
    "export { e } from 'e';",
    "const f = await import('f');",
    "// import g from 'g';",
  ].join('\n');
  expect(importsOf(text)).toEqual([
    { from: 'a', typeOnly: false },
    { from: 'b', typeOnly: true },
    { from: 'c', typeOnly: false },
    { from: 'e', typeOnly: false },
    { from: 'f', typeOnly: false },
  ]);
});
