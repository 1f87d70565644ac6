import { CODES, source } from './bibliography-codes';
import type { Source } from './limit';

const SUMMARY = 'Read in a public copy of the summary only.';

/** Where the limits are from, and how each was read. Nothing here was read in a bought, sealed copy: look limits up before you build. */
export const SOURCES: readonly Source[] = [
  ...CODES,
  source(
    'bia-28b',
    'Technical Note 28B, Brick veneer with steel studs, December 2005',
    'Brick Industry Association',
    SUMMARY,
  ),
  source(
    'bia-28c',
    'Technical Note 28C, Thin brick veneer, April 2014',
    'Brick Industry Association',
    SUMMARY,
  ),
  source(
    'bia-28-1980',
    'Technical Note 28 as it stood in 1980',
    'Brick Industry Association',
    'Read in trade magazines of the time and after.',
  ),
  source(
    'bia-18a',
    'Technical Note 18A, Brick expansion joints, 2006 and 2019',
    'Brick Industry Association',
    SUMMARY,
  ),
  source(
    'bia-31b',
    'Technical Note 31B, Steel lintels, May 1987',
    'Brick Industry Association',
    'Read in a public copy of the first page only.',
  ),
  source(
    'bia-8',
    'Technical Note 8, Mortars for brickwork, March 2020',
    'Brick Industry Association',
    SUMMARY,
  ),
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
  source('round-openings', 'Bricking around openings', 'Masonry Construction magazine', 'Read.'),
  source(
    'concrete-lintels',
    'Concrete masonry lintels',
    'Masonry Construction magazine',
    'Read; it quotes a handbook.',
  ),
  source(
    'masonry-spec-1979',
    'Guide specification for brickwork, September 1979',
    'Masonry Magazine',
    'Read.',
  ),
  source(
    'masonry-2004',
    'Cold weather masonry, January 1975 and September 2004',
    'Masonry Magazine',
    'Read.',
  ),
  source(
    'cold-weather',
    'Cold weather construction',
    'Mason Contractors Association of America',
    'Read; it tells what TMS 602 asks.',
  ),
  source(
    'hot-weather',
    'Hot weather construction',
    'Mason Contractors Association of America',
    'Read; it tells what TMS 602 asks.',
  ),
  source('hot-weather-magazine', 'Hot weather masonry', 'Masonry Construction magazine', 'Read.'),
  source(
    'nhbc-2011',
    'NHBC Standards 2011, Chapter 1.2',
    'National House-Building Council',
    'Read on the publisher’s own page.',
  ),
  source(
    'nhbc-2019',
    'NHBC Standards 2019, Chapter 9.1',
    'National House-Building Council',
    'Read on the publisher’s own page; some lines were cut off.',
  ),
  source(
    'nhbc-2020',
    'NHBC Standards 2020, Chapter 6.1',
    'National House-Building Council',
    'Read on the publisher’s own pages.',
  ),
  source(
    'nhbc-2022',
    'NHBC Standards 2022, Chapter 6.1',
    'National House-Building Council',
    'Read on the publisher’s own pages.',
  ),
  source(
    'nhbc-tg',
    'NHBC Technical Guidance 6.1/32',
    'National House-Building Council',
    'Quoted on another site.',
  ),
  source(
    'nhbc-guide',
    'Good craftsmanship guide, brickwork and blockwork',
    'National House-Building Council',
    'Read in a copy and in a summary on another site.',
  ),
  source(
    'labc-v8',
    'Technical Manual, version 8, Chapter 1: tolerances in brickwork',
    'LABC Warranty',
    'Read on the publisher’s own page.',
  ),
  source(
    'labc-laying',
    'Guide to laying bricks and blocks',
    'LABC Warranty',
    'Read on the publisher’s own page.',
  ),
  source(
    'labc-ties',
    'How to use cavity wall ties to meet the Building Regulations',
    'LABC Warranty',
    'Read; it tells what Approved Document A asks.',
  ),
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
    'Read on the publisher’s own pages.',
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
