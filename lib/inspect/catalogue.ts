import { BACK_MORTAR_ROWS } from './catalogue/back-mortar';
import { BOND_ROWS } from './catalogue/bond';
import { JOINT_ROWS } from './catalogue/joints';
import { LINE_ROWS } from './catalogue/line';
import { MORTAR_ROWS } from './catalogue/mortar';
import { SUPPORT_ROWS } from './catalogue/support';
import { TIE_ROWS } from './catalogue/ties';
import type { CatalogueRow } from './catalogue-row';
import type { CheckId } from './finding';

/** The fault catalogue, in the order of CHECKS. A check without a row does not compile. */
export const CATALOGUE: Readonly<Record<CheckId, CatalogueRow>> = {
  ...BACK_MORTAR_ROWS,
  ...JOINT_ROWS,
  ...LINE_ROWS,
  ...BOND_ROWS,
  ...SUPPORT_ROWS,
  ...TIE_ROWS,
  ...MORTAR_ROWS,
};
