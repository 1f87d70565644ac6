import type { Metadata } from 'next';
import Link from 'next/link';
import { TenLimits } from '../../../components/household/ten-limits';
import { LimitsCaution } from '../../../components/limits/limits-caution';
import { groundLimits } from '../../../lib/household/ten-limits';
import { RULE_SETS } from '../../../lib/limits/limit';

export const dynamic = 'error';

export const metadata: Metadata = {
  title: 'Ten limits from the ground',
  description:
    'Ten figures for brickwork that you can check from the ground with a tape and a string, by place.',
};

export default function GroundLimitsPage() {
  const limits = RULE_SETS.map((rules) => ({
    rules,
    mm: groundLimits(rules, 'mm'),
    inches: groundLimits(rules, 'inches'),
  }));
  return (
    <div className="column">
      <h1>Ten limits you can check from the ground</h1>
      <p>
        With a tape, a string and a straight piece of wood. First look from far off: do not go near a wall
        that leans, hangs or has dropped a piece.
      </p>
      <TenLimits limits={limits} />
      <LimitsCaution />
      <p>
        <Link href="/limits">Every limit, with how it was read</Link>
      </p>
    </div>
  );
}
