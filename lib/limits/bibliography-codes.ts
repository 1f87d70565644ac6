import type { Source } from './limit';

const TWO_COPIES = 'Read in two machine copies of the code, made by different people; they agree.';

export function source(
  key: string,
  title: string,
  publisher: string,
  read: string,
  more: Pick<Source, 'newer'> = {},
): Source {
  return { key, title, publisher, read, ...more };
}

/** Codes, standards and site rules; the rest of the bibliography follows them. */
export const CODES: readonly Source[] = [
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
    'csa-a371',
    'Workmanship and mortar joints: a page on CSA A371-14, Masonry construction for buildings',
    'Canada Masonry Design Centre',
    'The standard was not read: a trade body gives the figure. The same figure stands in a New Zealand guide.',
  ),
  source('csa-a370', 'CSA A370-14, Connectors for masonry', 'CSA Group', 'Not read.'),
  source(
    'irc-2021',
    'International Residential Code 2021, Sections R606 and R703',
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
];
