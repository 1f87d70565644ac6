import { angleVerdict } from '../../lib/limits/bound';
import type { RuleSetId } from '../../lib/limits/limit';
import { limitOf, ruleSetTitle, sourceOf } from '../../lib/limits/limits';
import { formatLength, type LengthSystem, type Mm } from '../../lib/units';
import { TradeTable } from './trade-table';

/** The angles of a rule set's table, each with whether it serves this opening. */
export function LintelTable(props: {
  readonly rules: RuleSetId;
  readonly clear: Mm;
  readonly depth: Mm;
  readonly storeys: number;
  readonly system: LengthSystem;
}) {
  const { rules, clear, depth, storeys, system } = props;
  const limit = limitOf(rules, 'angle-size');
  if (limit?.bound.form !== 'angle-table') {
    return (
      <p>{ruleSetTitle(rules)} has no table of angles here: the maker’s table or an engineer decides.</p>
    );
  }
  const { bound } = limit;
  const length = (mm: Mm) => formatLength(mm, system);
  return (
    <>
      <TradeTable
        caption={`Angles for ${length(clear)} by ${ruleSetTitle(rules)}`}
        heads={['Upright leg', 'Level leg', 'Thickness', 'This opening']}
      >
        {bound.rows.map((row) => {
          const serves = angleVerdict(bound, row, clear, { depth, storeys }).passes;
          return (
            <tr key={`${row.vertical} ${row.horizontal} ${row.thickness}`}>
              <td>{length(row.vertical)}</td>
              <td>{length(row.horizontal)}</td>
              <td>{length(row.thickness)}</td>
              <td>{serves ? '✓ serves' : '✗ does not serve'}</td>
            </tr>
          );
        })}
      </TradeTable>
      <p className="fine">
        Kind of limit: {limit.kind}. {sourceOf(limit).title}, {limit.clause.replace(/\.$/, '')}.{' '}
        {bound.caseBy === 'unit depth'
          ? 'It goes by the depth of the veneer.'
          : 'It goes by the storeys above.'}
      </p>
    </>
  );
}
