import type { Source } from './limit';

const TWO_COPIES = 'Read in two machine copies of the code, made by different people; they agree.';
const OWN_PAGE = 'Read on the publisher’s own page.';
const OWN_PAGES = 'Read on the publisher’s own pages.';
const NHBC_2025 = 'NHBC Standards 2025';
const SUMMARY = 'Read in a public copy of the summary only.';

/** Where the limits are from, and how each was read. Nothing here was read in a bought, sealed copy: look limits up before you build. */
export const SOURCES: readonly Source[] = [
  // Codes, standards and site rules.
  source(
    'nbc-2020',
    'National Building Code of Canada 2020, Division B, Section 9.20 (in the National Building Code, 2023 Alberta Edition)',
    'National Research Council of Canada',
    TWO_COPIES,
    { newer: 'NBC 2025' },
  ),
  source(
    'obc-2024',
    'Ontario Building Code 2024, Division B, Section 9.20',
    'Government of Ontario',
    'Read in one machine copy of the code; much of it also in the code of 2012, and the bearing and mortar rules on a second site.',
  ),
  source(
    'obc-2012',
    'Ontario Building Code 2012 (O. Reg. 332/12), Division B, Section 9.21: masonry chimneys',
    'Government of Ontario',
    'Read in a copy on another site, article by article.',
    { newer: 'Ontario Building Code 2024' },
  ),
  source(
    'csa-a371',
    'Workmanship and mortar joints: a page on CSA A371-14, Masonry construction for buildings',
    'Canada Masonry Design Centre',
    'The standard was not read: a trade body gives the figure. The same figure stands in a New Zealand guide.',
  ),
  source('csa-a370', 'CSA A370-14, Connectors for masonry', 'CSA Group', 'Not read.'),
  source(
    'irc-2021',
    'International Residential Code 2021, Sections R606, R703 and R1003',
    'International Code Council',
    'Read in copies that states adopted, four editions (2015 to 2024) side by side.',
    { newer: 'IRC 2024' },
  ),
  source(
    'irc-2024',
    'International Residential Code 2024, Section R703',
    'International Code Council',
    'Read in a copy for federal buildings.',
  ),
  source(
    'ibc-2021',
    'International Building Code 2021, Chapter 14',
    'International Code Council',
    'Read in copies that states adopted.',
  ),
  source(
    'astm-c270',
    'ASTM C270, Mortar for unit masonry',
    'ASTM International',
    'Not read itself: the table of properties is printed in a trade magazine of October 2000, the working life in those of March 1978 and December 1988. Its proportion table stands in the IRC.',
  ),
  source(
    'tms-602',
    'TMS 602, Specification for masonry structures, site tolerances',
    'The Masonry Society',
    'Not read itself: summed up by an association of mason contractors and by a trade magazine.',
  ),
  source(
    'tms-402',
    'TMS 402, Building code requirements for masonry structures, veneer chapters',
    'The Masonry Society',
    'Not read itself: told in trade articles, or from memory where a row says so.',
  ),
  source(
    'osha-1926-706',
    'Construction safety, 29 CFR 1926.706: masonry being built',
    'US Occupational Safety and Health Administration',
    'Not read itself: told in a digest, and in a letter and an article on it.',
  ),
  // Notes, guides and articles.
  ...published('Brick Industry Association', {
    'bia-28b': ['Technical Note 28B, Brick veneer with steel studs, December 2005', SUMMARY],
    'bia-28c': ['Technical Note 28C, Thin brick veneer, April 2014', SUMMARY],
    'bia-28-1980': [
      'Technical Note 28 as it stood in 1980',
      'Read in trade magazines of the time and after.',
    ],
    'bia-18a': ['Technical Note 18A, Brick expansion joints, 2006 and 2019', SUMMARY],
    'bia-31b': [
      'Technical Note 31B, Steel lintels, May 1987',
      'Read in a public copy of the first page only.',
    ],
    'bia-20': ['Technical Note 20, Cleaning brickwork', 'Read in a public copy.'],
    'bia-8': ['Technical Note 8, Mortars for brickwork, March 2020', SUMMARY],
  }),
  source(
    'beall-2004',
    'C. Beall, Masonry and Concrete',
    'McGraw-Hill, 2004',
    'A textbook, read in a library copy; it tells what codes and notes ask.',
  ),
  source(
    'ansi-a108-5',
    'ANSI A108.5, Setting of ceramic tile in thin cement mortar',
    'American National Standards Institute',
    'Not read itself: its coverage rule is quoted in four trade articles.',
  ),
  source(
    'ansi-a108-articles',
    'Articles on mortar coverage under tile',
    'Tile trade magazines',
    'Read. The advice on bare places is of one author, from a masonry institute.',
  ),
  source(
    'thin-brick-articles',
    'Ensuring the quality of thin brick veneer installations',
    'The Construction Specifier',
    'Read. It says that it follows ANSI A108.5.',
  ),
  source(
    'bre-cracks',
    'Assessing cracks in houses, after BRE Digest 251',
    'Building Research Establishment',
    'Not the digest itself: its bands of width are told by its publisher and on another page.',
  ),
  ...published('Masonry Construction magazine', {
    'round-openings': ['Bricking around openings', 'Read.'],
    'wetting-articles': [
      'Articles on wetting brick before it is laid',
      'Read; one tells what BIA Technical Note 28 asks.',
    ],
    'old-joints': ['Restoring mortar joints in historic buildings', 'Read in part.'],
    'concrete-lintels': ['Concrete masonry lintels', 'Read; it quotes a handbook.'],
  }),
  ...published('Masonry Magazine', {
    'masonry-spec-1979': ['Guide specification for brickwork, September 1979', 'Read.'],
    'masonry-2004': ['Cold weather masonry, January 1975 and September 2004', 'Read.'],
  }),
  ...published('Mason Contractors Association of America', {
    'cold-weather': ['Cold weather construction', 'Read; it tells what TMS 602 asks.'],
    'hot-weather': ['Hot weather construction', 'Read; it tells what TMS 602 asks.'],
  }),
  source(
    'suction-test',
    'J. T. Houston and C. T. Grimm, Field quality control test for wetting brick',
    'Journal of the Construction Division, July 1973',
    'Its summary was read, not the paper.',
  ),
  source('hot-weather-magazine', 'Hot weather masonry', 'Masonry Construction magazine', 'Read.'),
  ...published('National House-Building Council', {
    'nhbc-2011': ['NHBC Standards 2011, Chapter 1.2', OWN_PAGE, NHBC_2025],
    'nhbc-2019': [
      'NHBC Standards 2019, Chapter 9.1',
      'Read on the publisher’s own page; some lines were cut off.',
      NHBC_2025,
    ],
    'nhbc-2020': ['NHBC Standards 2020, Chapter 6.1', OWN_PAGES, NHBC_2025],
    'nhbc-2020-frame': ['NHBC Standards 2020, Chapter 6.2', OWN_PAGE, NHBC_2025],
    'nhbc-2022': ['NHBC Standards 2022, Chapter 6.1', OWN_PAGES, NHBC_2025],
    'nhbc-tg': ['NHBC Technical Guidance 6.1/32', 'Quoted on another site.'],
    'nhbc-guide': [
      'Good craftsmanship guide, brickwork and blockwork',
      'Read in a copy and in a summary on another site.',
    ],
  }),
  ...published('LABC Warranty', {
    'labc-v8': ['Technical Manual, version 8, Chapter 1: tolerances in brickwork', OWN_PAGE],
    'labc-laying': ['Guide to laying bricks and blocks', OWN_PAGE],
    'labc-trays': ['Guide to weep holes and cavity trays', OWN_PAGE],
    'labc-ties': [
      'How to use cavity wall ties to meet the Building Regulations',
      'Read; it tells what Approved Document A asks.',
    ],
  }),
  source('glossary', 'Glossary of brickwork: gauge', 'Tylers and Bricklayers Company', 'Read.'),
  source(
    'en-1996-2',
    'EN 1996-2:2006, Design of masonry structures: execution',
    'CEN',
    'Not read. Withdrawn in 2024 for a new edition.',
  ),
  source(
    'nzs-4210',
    'NZS 4210:2001, Masonry construction: materials and workmanship',
    'Standards New Zealand',
    'Not read itself: told by the brick and blocklayers’ federation and by producers.',
  ),
  source(
    'bbfnz',
    'Brick veneer best practice guide',
    'Brick and Blocklayers Federation of New Zealand',
    'Read.',
  ),
  source(
    'abcb-2022',
    'Housing Provisions Standard, National Construction Code 2022, Section 5',
    'Australian Building Codes Board',
    OWN_PAGES,
  ),
  source(
    'saskatchewan-2014',
    'Construction performance standards, January 2014',
    'New Home Warranty Program of Saskatchewan',
    'Read in a copy.',
  ),
  source(
    'training-default',
    'Training defaults of this site',
    'Read the Wall',
    'No source. Chosen by us so that a fault can be told from sound work in training.',
  ),
];

function source(
  key: string,
  title: string,
  publisher: string,
  read: string,
  more: Pick<Source, 'newer'> = {},
): Source {
  return { key, title, publisher, read, ...more };
}

/** Sources of one publisher: title, how it was read, and a later edition that was not. */
function published(
  publisher: string,
  sources: Readonly<Record<string, readonly [title: string, read: string, newer?: string]>>,
): readonly Source[] {
  return Object.entries(sources).map(([key, [title, read, newer]]) =>
    source(key, title, publisher, read, newer === undefined ? {} : { newer }),
  );
}
