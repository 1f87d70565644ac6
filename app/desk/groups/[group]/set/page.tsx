import type { Metadata } from 'next';
import { MOST_ATTEMPTS, MOST_WALLS, type SetWorkSpec } from '../../../../../lib/classes/set-work';
import { TEMPLATES, type Template, templateOf } from '../../../../../lib/classes/templates';
import { TOPICS } from '../../../../../lib/generate/topics';
import { RULE_SETS } from '../../../../../lib/limits/limit';
import { groupOf } from '../../../../../lib/store/groups/groups';
import { worksOf } from '../../../../../lib/store/set-work';
import { WALL_KINDS } from '../../../../../lib/wall/model';
import { requirePage } from '../../../../access/require-page';
import { readLessons } from '../../../../lessons/read-lessons';
import { WorkForm } from '../../../../set-work/work-form';
import styles from '../../../desk.module.css';

export const metadata: Metadata = { title: 'Set work' };

type Asked = Readonly<Record<string, string | readonly string[] | undefined>>;

interface Props {
  readonly params: Promise<{ readonly group: string }>;
  readonly searchParams: Promise<Asked>;
}

export default async function MakeWorkPage({ params, searchParams }: Props) {
  const {
    params: { group: id = '' },
    store,
  } = await requirePage('/desk/groups/[group]/set', params);
  const asked = await searchParams;
  const [group, [last], lessons] = await Promise.all([groupOf(store, id), worksOf(store, id), readLessons()]);
  const template = templateOf(textIn(asked, 'template'));
  const isReady = asked.topics !== undefined;
  // The rules of the last work: a group is taught by one rule set.
  const spec = specOf({ ...template.spec, rules: last?.spec.rules ?? template.spec.rules }, asked);
  const start = {
    title: textIn(asked, 'title') ?? template.title,
    spec,
    release: template.release,
    opensAt: null,
    dueAt: null,
    days: template.days,
    graceMinutes: 15,
  };
  return (
    <div className={styles.page}>
      <p>
        <a className="link" href={`/desk/groups/${id}`}>
          {group.name}
        </a>
      </p>
      <h1>Set work</h1>
      {!isReady && <Templates chosen={template} group={id} />}
      <WorkForm
        key={template.id}
        action="/api/work"
        send="Save as draft and preview"
        also={{ group: id }}
        start={start}
        lessons={lessons.map(({ slug, meta }) => ({ slug, title: meta.title }))}
      />
      <p className={styles.soft}>Learners see nothing yet. You look at the walls and the key first.</p>
    </div>
  );
}

function Templates({ chosen, group }: { readonly chosen: Template; readonly group: string }) {
  return (
    <>
      <h2>Begin with</h2>
      <ul className={`cards ${styles.cards}`}>
        {TEMPLATES.map(({ id, title, use }) => (
          <li key={id} data-chosen={id === chosen.id}>
            <h3>
              <a
                className="link"
                href={`/desk/groups/${group}/set?template=${id}`}
                aria-current={id === chosen.id ? 'true' : undefined}
              >
                {id === chosen.id && <span aria-hidden="true">✓ </span>}
                {title}
              </a>
            </h3>
            <p>{use}</p>
          </li>
        ))}
      </ul>
    </>
  );
}

/** A spec with what the address asks for, such as a link from the mark book. What it says wrongly is left as it was. */
function specOf(spec: SetWorkSpec, asked: Asked): SetWorkSpec {
  const list = <T extends string>(name: string, from: readonly T[], usual: readonly T[]) => {
    const named = (textIn(asked, name) ?? '').split(',');
    const known = from.filter((each) => named.includes(each));
    return known.length > 0 ? known : usual;
  };
  const whole = (name: string, most: number, usual: number) => {
    const value = Number(textIn(asked, name));
    return Number.isInteger(value) && value >= 1 && value <= most ? value : usual;
  };
  const same = textIn(asked, 'sameForAll');
  return {
    ...spec,
    topics: list('topics', TOPICS, spec.topics),
    kinds: list('kinds', WALL_KINDS, spec.kinds),
    walls: whole('walls', MOST_WALLS, spec.walls),
    difficulty: whole('difficulty', 5, spec.difficulty),
    rules: RULE_SETS.find((each) => each === textIn(asked, 'rules')) ?? spec.rules,
    sameForAll: same === undefined ? spec.sameForAll : same === 'true',
    attempts: whole('attempts', MOST_ATTEMPTS, spec.attempts),
  };
}

function textIn(asked: Asked, name: string): string | undefined {
  const value = asked[name];
  return typeof value === 'string' ? value.slice(0, 200) : undefined;
}
