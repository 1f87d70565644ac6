'use client';

import Link from 'next/link';
import type { GroundLimit } from '../../lib/household/ten-limits';
import type { RuleSetId } from '../../lib/limits/limit';
import type { LengthSystem } from '../../lib/units';
import { LengthChoice } from '../forms/length-choice';
import { chooseRules, useLengthsHere, useOneRuleSet } from '../forms/rules-in-use';
import { KIND_WORDS } from '../limits/limit-words';
import styles from './household.module.css';
import { PlaceChoice } from './place-choice';

type ByPlace = { readonly rules: RuleSetId } & Readonly<Record<LengthSystem, readonly GroundLimit[]>>;

/** Ten limits by the reader's place and lengths, worked out by the server. */
export function TenLimits({ limits }: { readonly limits: readonly ByPlace[] }) {
  const rules = useOneRuleSet();
  const system = useLengthsHere();
  const shown = limits.find((each) => each.rules === rules)?.[system] ?? [];
  return (
    <>
      <PlaceChoice rules={rules} onChoose={chooseRules} />
      <LengthChoice system={system} />
      <ol className={styles.ground}>
        {shown.map(({ title, how, asked, kind, source, sourceKey, borrowed }) => (
          <li key={title}>
            <strong>{title}:</strong> {asked}
            <br />
            {how}{' '}
            <span className="fine">
              <span className={borrowed ? 'tag tag-practice' : 'tag'}>{KIND_WORDS[kind]}</span>{' '}
              {borrowed && 'Your place gives no figure; this one is borrowed to compare. '}
              <Link href={`/sources#${sourceKey}`} prefetch={false}>
                {source}
              </Link>
            </span>
          </li>
        ))}
      </ol>
    </>
  );
}
