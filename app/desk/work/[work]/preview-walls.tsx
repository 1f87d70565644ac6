import { KeyList } from '../../../set-work/key-list';
import type { PreviewWall } from '../../../set-work/preview';
import styles from '../../desk.module.css';

/** Each wall from in front, the way to try it as a learner, and its key, folded away from a glance over the shoulder. */
export function PreviewWalls(props: {
  readonly work: string;
  readonly walls: readonly PreviewWall[];
  readonly learner: string | null;
}) {
  const { work, walls, learner } = props;
  const whose = learner === null ? '' : `&learner=${encodeURIComponent(learner)}`;
  return (
    <ol className={`cards ${styles.walls}`}>
      {walls.map(({ place, kind, key }) => (
        <li key={place}>
          {/* biome-ignore lint/performance/noImgElement: a drawing made for this page, which no image server can make smaller */}
          <img
            src={`/api/work/${work}/picture?place=${place}${whose}`}
            alt={`Wall ${place} from in front: ${kind}`}
            loading="lazy"
          />
          <h3>
            Wall {place} · {kind}
          </h3>
          <p>
            <a className="link" href={`/desk/work/${work}?wall=${place}${whose}`}>
              Try wall {place} as a learner
            </a>
          </p>
          <details className="disclosure">
            <summary>Key of wall {place}</summary>
            <KeyList lines={key} />
          </details>
        </li>
      ))}
    </ol>
  );
}

/** Whose walls are shown. */
export function FormChoice(props: {
  readonly work: string;
  readonly learners: readonly { readonly id: string; readonly name: string }[];
  readonly chosen: string;
}) {
  const { work, learners, chosen } = props;
  return (
    <form method="get" action={`/desk/work/${work}`} className={styles.more}>
      <p>
        <label htmlFor="learner">Walls of</label>{' '}
        <select id="learner" name="learner" defaultValue={chosen}>
          {learners.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </p>
      <p>
        <button type="submit" className="button button-plain">
          Show these walls
        </button>
      </p>
    </form>
  );
}
