import { boundAt } from '../../../limits/bound';
import type { Limit, Limits } from '../../../limits/limit';
import { bedId, headId } from '../../../wall/part-id';
import { headWidth, type PanelSurvey, type Placed, type Survey } from '../../../wall/survey';
import { type Measurement, passes, type Report, severityOf } from '../../check';
import { bedBox, headBox, joined } from '../../places';

type Way = 'thick' | 'thin';

/** Beds and heads against their thickness, one way: both joint checks are this with another end. */
export function measureJoints(survey: Survey, limits: Limits, way: Way, report: Report): void {
  const fromMean = limits('bed-from-mean-of-eight');
  for (const panel of survey.panels) {
    const ranges = fromMean ? meansOfEight(panel) : null;
    for (const [index, course] of panel.courses.entries()) {
      const first = index === 0;
      const limit =
        ranges && !first && fromMean
          ? fromMean
          : limits(`${first ? 'first-bed' : 'bed-joint'}-${way === 'thick' ? 'most' : 'least'}`);
      if (limit !== undefined)
        measureBeds(course, limit, way, (first ? null : ranges?.[index]) ?? null, report);
      measureHeads(course, limits(`head-joint-${way === 'thick' ? 'most' : 'least'}`), report);
    }
  }
}

/** Thickness of the bed under a unit: the mean of its two ends. */
export function bedMean({ bed }: Placed): number | null {
  return bed === null ? null : (bed.left + bed.right) / 2;
}

/** Neighbouring beds that fail the same way are one thing seen, at the worst of them. */
function measureBeds(
  course: readonly Placed[],
  limit: Limit,
  way: Way,
  means: { readonly least: number; readonly most: number } | null,
  report: Report,
): void {
  const bound = boundAt(limit, {});
  let run: { placed: Placed; measurement: Measurement }[] = [];
  const close = () => {
    if (run.length > 0) reportRun(run, report);
    run = [];
  };
  for (const placed of course) {
    const mean = bedMean(placed);
    if (mean === null) {
      close();
      continue;
    }
    const measured = means === null ? mean : way === 'thick' ? mean - means.least : means.most - mean;
    const measurement: Measurement = {
      limit,
      end: limit.end === 'at least' ? 'at least' : 'at most',
      measured,
      bound,
      at: bedId(placed.unit.id),
      place: () => ({ parts: [bedId(placed.unit.id), placed.unit.id], region: bedBox(placed) }),
    };
    if (passes(measurement)) {
      close();
      report(measurement);
    } else {
      if (placed.left === null) close();
      run.push({ placed, measurement });
    }
  }
  close();
}

function reportRun(run: readonly { placed: Placed; measurement: Measurement }[], report: Report): void {
  const worst = run.reduce((most, each) =>
    severityOf(each.measurement) > severityOf(most.measurement) ? each : most,
  );
  report({
    ...worst.measurement,
    place: () => ({
      parts: [
        worst.measurement.at,
        ...run.filter((each) => each !== worst).map(({ measurement }) => measurement.at),
        ...run.map(({ placed }) => placed.unit.id),
      ],
      region: joined(run.map(({ placed }) => bedBox(placed))),
    }),
  });
}

function measureHeads(course: readonly Placed[], limit: Limit | undefined, report: Report): void {
  if (limit === undefined) return;
  const bound = boundAt(limit, {});
  for (const left of course) {
    const { right } = left;
    if (right === null) continue;
    const head = headId(left.unit.id, right.unit.position);
    report({
      limit,
      end: limit.end === 'at least' ? 'at least' : 'at most',
      measured: headWidth(left.unit, right.unit),
      bound,
      at: head,
      place: () => ({ parts: [head, left.unit.id, right.unit.id], region: headBox(left) }),
    });
  }
}

/** For each course, the least and greatest mean of any eight course beds in a row that include it; the bed on the ledge is left out. */
function meansOfEight(panel: PanelSurvey): readonly ({ least: number; most: number } | null)[] {
  const beds = panel.courses.map((course) => {
    let sum = 0;
    let count = 0;
    for (const placed of course) {
      const mean = bedMean(placed);
      if (mean === null) continue;
      sum += mean;
      count += 1;
    }
    return count === 0 ? 0 : sum / count;
  });
  const window = Math.min(8, beds.length - 1);
  return beds.map((_, course) => {
    if (course === 0) return null;
    let least = Number.POSITIVE_INFINITY;
    let most = Number.NEGATIVE_INFINITY;
    const last = Math.min(course, beds.length - window);
    for (let from = Math.max(1, course - window + 1); from <= last; from++) {
      let sum = 0;
      for (let each = from; each < from + window; each++) sum += beds[each] ?? 0;
      least = Math.min(least, sum / window);
      most = Math.max(most, sum / window);
    }
    return { least, most };
  });
}
