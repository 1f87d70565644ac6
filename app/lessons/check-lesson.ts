import { DRAWINGS } from '../../components/trade/drawings';
import { TOPICS } from '../../lib/generate/topics';
import { CHECKS } from '../../lib/inspect/finding';
import { SOURCES } from '../../lib/limits/bibliography';
import { RULE_SETS } from '../../lib/limits/limit';
import { ALL_LIMITS } from '../../lib/limits/limits';
import { QUESTION_TOPICS } from '../../lib/questions/topics';
import { isTerm } from '../glossary/glossary';
import { isFamily } from './lesson-families';
import { type LessonPicture, parsePicture } from './lesson-pictures';
import { isComponent, nodesOf, plainAttributes, proseOf, type TextNode } from './lesson-tree';

/** What every lesson goes through, in this order. A lesson's headings are these. */
export const STEPS = [
  'Look first',
  'What good looks like',
  'How it is done right',
  'How it is measured',
  'What is required',
  'What goes wrong',
  'What puts it right',
  'Your turn',
] as const;

/** What a lesson was found to use, in reading order. */
export interface LessonParts {
  readonly pictures: readonly LessonPicture[];
  readonly terms: readonly string[];
  readonly limits: readonly string[];
  /** How long it takes to read and to look at. */
  readonly minutes: number;
}

export interface Complaint {
  readonly line: number;
  readonly says: string;
}

/** Where a link inside the site may lead. `slugs`: the lessons there are. */
export function isKnownPage(url: string, slugs: readonly string[]): boolean {
  const [path = '', anchor] = url.split('#');
  if (path === '/glossary') return anchor === undefined || isTerm(anchor);
  if (anchor !== undefined) return false;
  return (
    ['/walls', '/practise/visit', '/limits', '/safety', '/lessons', '/sources'].includes(path) ||
    slugs.some((slug) => path === `/lessons/${slug}`)
  );
}

type Attributes = Readonly<Record<string, string>>;

/** What is wrong with a component as it is used, or undefined. */
const COMPONENTS: Readonly<Record<string, (attributes: Attributes) => string | undefined>> = {
  Limit: ({ id = '', rules }) =>
    unknown('limit', id, (known) => ALL_LIMITS.some((limit) => limit.id === known)) ??
    (rules === undefined
      ? undefined
      : unknown('rule set', rules, (known) => RULE_SETS.some((set) => set === known))),
  Source: ({ id = '' }) => unknown('source', id, (known) => SOURCES.some(({ key }) => key === known)),
  Term: ({ id = '' }) => unknown('term', id, isTerm),
  Fault: ({ id = '' }) => unknown('fault', id, (known) => CHECKS.some((check) => check === known)),
  Drawing: ({ name = '' }) =>
    unknown('drawing', name, (known) => DRAWINGS.some((drawing) => drawing.name === known)),
  Questions: ({ topic = '' }) =>
    unknown('topic of questions', topic, (known) => QUESTION_TOPICS.some((each) => each === known)),
  Practise: ({ topic = '' }) => unknown('topic', topic, (known) => TOPICS.some((each) => each === known)),
  Pair: ({ of = '', faulty = '' }) =>
    unknown('family of walls', of, isFamily) ??
    (['first', 'second'].includes(faulty) ? undefined : 'faulty has to be first or second'),
  Wall: (attributes) => {
    const picture = parsePicture(attributes);
    return typeof picture === 'string' ? picture : undefined;
  },
  Caution: ({ of = 'health' }) => unknown('kind of caution', of, (known) => known === 'health'),
};

function unknown(what: string, name: string, isKnown: (name: string) => boolean): string | undefined {
  return isKnown(name) ? undefined : `there is no ${what} "${name}"`;
}

/** Looks through a lesson for all that would break its page or its rules. Lines count from the start of the text. */
export function checkLesson(tree: TextNode, slugs: readonly string[]): readonly Complaint[] {
  const nodes = [...nodesOf(tree)];
  return [...nodes.flatMap((node) => complaintsOf(node, slugs)), ...stepComplaints(tree)];
}

function complaintsOf(node: TextNode, slugs: readonly string[]): readonly Complaint[] {
  const at = (says: string | undefined): readonly Complaint[] =>
    says === undefined ? [] : [{ line: node.position?.start.line ?? 1, says }];
  if (isComponent(node)) {
    const check = COMPONENTS[node.name ?? ''];
    if (check === undefined) return at(`there is no component <${node.name ?? ''}>`);
    return at(check(plainAttributes(node)));
  }
  switch (node.type) {
    case 'mdxjsEsm':
      // The compiler puts the front matter in as code of its own, at no line.
      return node.position === undefined ? [] : at('no import or export; name a component from the map');
    case 'mdxFlowExpression':
    case 'mdxTextExpression':
      return at('no code in a lesson; name a component from the map');
    case 'link': {
      const url = node.url ?? '';
      return at(isKnownPage(url, slugs) ? undefined : `there is no page ${url}`);
    }
    case 'text': {
      const figures = typedMeasurements(node.value ?? '');
      return at(figures.length === 0 ? undefined : `a figure typed by hand: ${figures.join(', ')}`);
    }
    default:
      return [];
  }
}

/** The headings are the steps, in order, and a drawing stands before any words. */
function stepComplaints(tree: TextNode): readonly Complaint[] {
  const headings = (tree.children ?? []).filter(({ type, depth }) => type === 'heading' && depth === 2);
  const wrong = STEPS.findIndex((step, index) => {
    const heading = headings[index];
    return heading === undefined || proseOf(heading) !== step;
  });
  if (wrong >= 0) {
    const line = headings[wrong]?.position?.start.line ?? 1;
    return [{ line, says: `step ${wrong + 1} has to be "## ${STEPS[wrong]}"` }];
  }
  const [, first] = (tree.children ?? []).filter(({ type }) => type !== 'mdxjsEsm' && type !== 'yaml');
  if (first !== undefined && isComponent(first) && first.name === 'Wall') return [];
  return [
    { line: first?.position?.start.line ?? 1, says: 'a wall to look at has to stand before any words' },
  ];
}

/** Words a minute for a reader whose first language may be another, and minutes to look at a drawing or a limit: ours to choose. */
const PACE = 130;
const LOOK = 0.5;

export function minutesFor(words: number, looks: number): number {
  return Math.ceil(words / PACE + looks * LOOK);
}

/** Collects what the page needs to know of a lesson before it is shown. */
export function partsOfLesson(tree: TextNode): LessonParts {
  const used = [...nodesOf(tree)].filter(isComponent);
  const idsOf = (name: string) => [
    ...new Set(used.flatMap((node) => (node.name === name ? [plainAttributes(node).id ?? ''] : []))),
  ];
  const pictures = used.flatMap((node) => picturesOf(node));
  const words = proseWithSpaces(tree).match(/[\p{L}’'-]+/gu)?.length ?? 0;
  const limits = idsOf('Limit');
  return {
    pictures,
    terms: idsOf('Term'),
    limits,
    minutes: minutesFor(words, pictures.length + limits.length),
  };
}

function proseWithSpaces(tree: TextNode): string {
  return [...nodesOf(tree)].map(({ type, value }) => (type === 'text' ? value : '')).join(' ');
}

function picturesOf(node: TextNode): readonly LessonPicture[] {
  const attributes = plainAttributes(node);
  if (node.name === 'Pair') return pairOf(attributes);
  if (node.name !== 'Wall') return [];
  const picture = parsePicture(attributes);
  return typeof picture === 'string' ? [] : [picture];
}

/** The two drawings of a pair, the sound wall first. */
export function pairOf({ of = '', view = 'front', close }: Attributes): readonly LessonPicture[] {
  return ['sound', 'spoiled'].flatMap((state) => {
    const picture = parsePicture({ of, state, view, ...(close === undefined ? {} : { close }) });
    return typeof picture === 'string' ? [] : [picture];
  });
}

const NUMBER =
  'one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|twenty|thirty|forty|fifty|sixty|ninety|hundred|half|quarter|third|thirds';
const UNIT =
  'mm|cm|millimet\\w+|centimet\\w+|met(?:re|er)s?|inch|inches|foot|feet|degrees?|hours?|minutes?|days?|weeks?|years?|per ?cent|kilograms?|pounds?|tonnes?|storeys?';

const PATTERNS = [
  new RegExp(`\\b(?:${NUMBER})\\b(?: (?:a|an|of an?|square))? (?:${UNIT})\\b`, 'gi'),
  /\b(?:a|one|two) (?:third|thirds|quarter|quarters|tenth|tenths)\b/gi,
] as const;

/** Figures that someone typed into prose: a figure comes from the limits or is worked out, so that text and check cannot part. */
export function typedMeasurements(prose: string): readonly string[] {
  const figures = prose.split(/\s+/).filter((word) => /\d/.test(word));
  return [...figures, ...PATTERNS.flatMap((pattern) => prose.match(pattern) ?? [])];
}
