import { readFileSync } from 'node:fs';
import { type Laid, layByCode } from '../../lib/engines/engines';
import { grade } from '../../lib/exercise/grade';
import { keyOf } from '../../lib/exercise/key';
import { parseMarks } from '../../lib/exercise/read-marks';
import { SEASONS } from '../../lib/failing/state/model';
import { type Brief, parseBrief } from '../../lib/generate/brief';
import { codeOf, parseCode } from '../../lib/generate/wall-code';
import { mechanismNamed } from '../../lib/mechanisms/act';
import { failingSvg } from '../../lib/views/failing/failing-view';
import { printSvg } from '../../lib/views/print-svg';
import { fingerprintOf } from '../../lib/wall/print';
import { parseWall, wallJsonSchema } from '../../lib/wall/schema';
import type { Survey } from '../../lib/wall/survey';
import { type SurveyedWall, surveyedWall } from '../../lib/wall/surveyed';
import { CallError, firstLine, printCommand, readOptions } from './command';
import { failingText, failingWall, type Lost, mechanismHelp, readFailing } from './failing-wall';

const USAGE = `Usage: npm run -s wall -- [--code CODE | --topic T --kind K --difficulty 1-5 --rules R --seed N]
  --json            print {code, brief, fingerprint, wall, findings}
  --svg VIEW        print a drawing: front, side-section, section, above, below, behind, before-cover, tickets
  --marks FILE      grade the marks in a JSON file and print the result
  --wall FILE       inspect the wall in a JSON file instead of laying one; with --rules
  --schema          print the JSON Schema of a wall
  --mechanism NAME  let something work on the wall first (help: all there are); with
      --years N, --season S   how long, 0 to 200, and when it is seen: spring, summer, autumn, winter
      --let-go N              let the unit that is held least come away, N times
      --json                  adds state, margins, next and causes`;

const MOST_YEARS = 200;

const OPTIONS = {
  topic: { type: 'string' },
  kind: { type: 'string' },
  difficulty: { type: 'string' },
  rules: { type: 'string' },
  seed: { type: 'string' },
  code: { type: 'string' },
  json: { type: 'boolean' },
  svg: { type: 'string' },
  marks: { type: 'string' },
  wall: { type: 'string' },
  schema: { type: 'boolean' },
  mechanism: { type: 'string' },
  years: { type: 'string' },
  season: { type: 'string' },
  'let-go': { type: 'string' },
  help: { type: 'boolean' },
} as const;

type Options = ReturnType<typeof readOptions<{ readonly options: typeof OPTIONS }>>['values'];

/** Errors that say, in one sentence, what is wrong with the call. */
const EXPECTED = [
  'BriefError',
  'GradingError',
  'MarksError',
  'MarkingError',
  'MechanismError',
  'ViewError',
  'WallError',
];

function run(): string {
  const options = readOptions({ options: OPTIONS }).values;
  if (options.help) return USAGE;
  if (options.mechanism === 'help') return mechanismHelp();
  if (options.schema) return JSON.stringify(wallJsonSchema(), null, 2);
  const brief = briefOf(options);
  const laid = options.wall === undefined ? layByCode(brief) : readWall(options.wall);
  const surveyed = surveyedWall(laid.wall);
  const failing = failingOf(options, surveyed, brief.seed);
  if (options.svg !== undefined) return drawn(surveyed, options.svg, failing);
  const key = keyOf(surveyed, brief.rules);
  if (options.marks !== undefined) {
    return JSON.stringify(grade(key, parseMarks(readText(options.marks))), null, 2);
  }
  const { wall, findings } = key;
  const fingerprint = fingerprintOf(laid.asLaid);
  const read = failing === null ? null : readFailing(failing);
  if (options.wall !== undefined) return JSON.stringify({ fingerprint, findings, ...read }, null, 2);
  const code = codeOf(brief);
  if (options.json) return JSON.stringify({ code, brief, fingerprint, wall, findings, ...read });
  if (read !== null) return failingText(read);
  const lines = findings.map(
    ({ check, parts, measured, unit, limit, source }) =>
      `${check} at ${parts[0]}: ${round(measured)} ${unit}, limit ${round(limit)} (${source.title}, ${source.clause})`,
  );
  return [
    `${code}  ${fingerprint}  ${wall.units.length} units`,
    ...(lines.length > 0 ? lines : ['sound']),
  ].join('\n');
}

/** What a mechanism has made of the wall, where one was asked for. */
function failingOf(options: Options, survey: Survey, seed: number): Lost | null {
  const { mechanism, years = '20', season = 'summer', 'let-go': losses = '0' } = options;
  if (mechanism === undefined) {
    const alone = (['years', 'season', 'let-go'] as const).find((name) => options[name] !== undefined);
    if (alone !== undefined) throw new CallError(`--${alone}: goes with --mechanism`);
    return null;
  }
  const when = SEASONS.find((each) => each === season);
  if (when === undefined) throw new CallError(`--season: "${season}" is not one of ${SEASONS.join(', ')}`);
  return failingWall(survey, {
    mechanism: mechanismNamed(mechanism),
    years: wholeNumber('years', years, MOST_YEARS),
    season: when,
    seed,
    losses: wholeNumber('let-go', losses, survey.wall.units.length),
  });
}

function drawn(surveyed: SurveyedWall, view: string, failing: Lost | null): string {
  if (failing === null) return printSvg(surveyed, view);
  if (view === 'front') return failingSvg(failing.failing);
  throw new CallError(`--svg: "${view}": a wall that something has worked on is drawn from the front alone`);
}

function wholeNumber(name: string, text: string, most: number): number {
  if (/^\d{1,6}$/.test(text) && Number(text) <= most) return Number(text);
  throw new CallError(`--${name}: "${text.slice(0, 40)}" is not a whole number from 0 to ${most}`);
}

function briefOf(options: Options): Brief {
  if (options.code !== undefined) {
    const beside = (['topic', 'kind', 'difficulty', 'rules', 'seed'] as const).find(
      (name) => options[name] !== undefined,
    );
    if (beside)
      throw new CallError(`--code and --${beside}: a code holds the whole brief, give one of the two`);
    return parseCode(options.code);
  }
  const { topic = 'mixed', kind = 'plain-panel', difficulty = '2', rules = 'canada', seed = '1' } = options;
  return parseBrief({ topic, kind, difficulty, rules, seed });
}

function readWall(file: string): Laid {
  const text = readText(file);
  let loose: unknown;
  try {
    loose = JSON.parse(text);
  } catch (error) {
    throw new CallError(`--wall: not JSON: ${firstLine(error)}`);
  }
  const wall = parseWall(loose);
  return { wall, asLaid: wall };
}

function readText(file: string): string {
  try {
    return readFileSync(file === '-' ? 0 : file, 'utf8');
  } catch {
    throw new CallError(`the file "${file}" cannot be read`);
  }
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}

printCommand(run, EXPECTED);
