/**
 * What an instructor wants on one sheet before the drill: what it teaches, each cause with where its signs can be made out,
 * what it can do by the hazards derived, what works and what only tempts; what only looks wrong; what to talk about. All from
 * the scenario, the World at the call and the catalogue, but for the author's own notes. Not for trainees.
 */
import { condition } from '../catalogue/conditions.ts';
import { controlKind } from '../catalogue/controls.ts';
import { faultKind } from '../catalogue/faults.ts';
import { jobKind } from '../catalogue/jobs.ts';
import type { Severity } from '../catalogue/types.ts';
import { hazardsIn } from '../hazards/hazardsIn.ts';
import type { Hazard } from '../hazards/types.ts';
import type { Scenario } from '../scenario/types.ts';
import { type Laid, laidIn, perceivableFrom, type Vantage } from '../score/known.ts';
import type { UnitSystem } from '../units/formatQuantity.ts';
import type { World } from '../world/types.ts';
import { caution } from './caution.ts';
import { clockAt } from './clock.ts';
import { best, hazardWords, whereWords, worstOfEach } from './hazardCards.ts';
import { leftWords, oneSafeWay, type ProvenRoute, parWords, routeRows, safeSteps } from './routes.ts';
import { capital, nameOf, sentence } from './words.ts';

/** Something that is wrong, and what there is to say about it. */
export interface SheetCause {
  readonly cause: string;
  readonly title: string;
  readonly part: string;
  /** The worst of the hazards that it causes. */
  readonly severity: Severity;
  /** One line a sign: where it can be made out at the call, and by what; empty where only time brings it. */
  readonly found: readonly string[];
  readonly does: readonly string[];
  readonly controls: readonly string[];
  readonly tempting: readonly string[];
  readonly tellApart: string;
  readonly source: string;
}

/** Something that only looks wrong. */
export interface SheetLookAlike {
  readonly lookAlike: string;
  readonly title: string;
  readonly part: string;
  readonly found: readonly string[];
  readonly mistakenFor: readonly string[];
  readonly tellApart: string;
}

export interface InstructorSheet {
  readonly scenario: string;
  readonly title: string;
  readonly grade: number;
  readonly teaches: string;
  readonly call: string;
  readonly job: string;
  readonly causes: readonly SheetCause[];
  readonly lookAlikes: readonly SheetLookAlike[];
  /** What can hurt somebody though nothing is wrong with it: a line in service. */
  readonly besides: readonly string[];
  /** A route that a proof found and that exposes nobody here, a row an act; null where there is none at hand. */
  readonly route: { readonly words: string; readonly rows: readonly string[] } | null;
  readonly discussion: readonly string[];
  readonly caution: string;
}

const severities: readonly Severity[] = ['fatal', 'serious', 'minor', 'damage'];
const rank = (severity: Severity): number => severities.indexOf(severity);

/** Where the trade differs, once each. */
const limitsOf = (ids: readonly string[]): readonly string[] =>
  [...new Set(ids)].sort().map((id) => `${controlKind(id).name}: ${controlKind(id).limits}`);

/** The worst that it does here, not what its kind does elsewhere. */
const severityOf = (caused: readonly Hazard[], kind: { readonly severity: Severity }): Severity =>
  caused.reduce<Severity | null>(
    (worst, { severity }) => (worst === null || rank(severity) < rank(worst) ? severity : worst),
    null,
  ) ?? kind.severity;

function causeOf(world: World, { on, fault }: Laid, found: readonly string[], system: UnitSystem): SheetCause {
  const kind = faultKind(fault.kind);
  const caused = hazardsIn(world).filter(({ causes }) => causes.includes(fault.id));
  const shown = worstOfEach(
    caused.filter(({ mechanism }) => mechanism !== 'barrier-loss'),
    on,
  );
  return {
    cause: fault.id,
    title: kind.name,
    part: nameOf(world, on),
    severity: severityOf(caused, kind),
    found,
    does: [kind.harm, ...shown.map((hazard) => hazardWords(world, hazard, system))],
    controls: kind.controls.map((id) => `${controlKind(id).name} (${controlKind(id).rule})`),
    tempting: kind.tempting.map(({ what, why }) => `${what}: ${why}`),
    tellApart: kind.tellApart,
    source: kind.source,
  };
}

function lookAlikeOf(world: World, { on, fault }: Laid, found: readonly string[]): SheetLookAlike {
  const { name, mistakenFor = [], tellApart } = faultKind(fault.kind);
  return {
    lookAlike: fault.id,
    title: name,
    part: nameOf(world, on),
    found,
    mistakenFor: mistakenFor.map((id) => condition(id).label),
    tellApart,
  };
}

/** One line a sign: its words, then every place from where it is made out. */
function bySign(world: World, vantages: readonly Vantage[]): readonly string[] {
  const signs = [...new Set(vantages.map(({ sign }) => sign))];
  return signs.map((sign) => {
    const places = vantages.filter((each) => each.sign === sign).map((each) => whereWords(world, each));
    return `\u201c${sign}\u201d ${places.join('; ')}.`;
  });
}

/** The author's notes, what tempts, and where the trade differs. */
function discussionOf(scenario: Scenario, laid: readonly Laid[], fine: readonly Laid[]): readonly string[] {
  const kinds = laid.map(({ fault }) => faultKind(fault.kind));
  const tempting = kinds.flatMap((kind) => kind.tempting.map(({ what }) => ({ what, name: kind.name })));
  const asked = tempting.map(
    ({ what, name }) => `Who would: ${what.replace(/^[A-Z]/, (a) => a.toLowerCase())} (${name})?`,
  );
  const unsure = fine.map(({ fault }) => `Who called the ${faultKind(fault.kind).name}, and what tells it apart?`);
  const { kind } = scenario.job;
  const differs = [
    ...(kind === undefined ? [] : [`${jobKind(kind).name}: ${jobKind(kind).limits}`]),
    ...limitsOf(kinds.flatMap(({ controls }) => controls)),
  ];
  return [
    ...(scenario.instructor ?? []),
    ...new Set([...asked, ...unsure]),
    ...differs.map((words) => `Limits and practice. ${sentence(words)}`),
  ];
}

/** The proven route as it goes in this very World; one that does not is left out. */
function routeOf(world: World, proven: ProvenRoute | null): InstructorSheet['route'] {
  const steps = proven && safeSteps(world, proven.acts);
  return (
    steps && {
      words: [parWords(proven), oneSafeWay, leftWords(steps)].join(' ').trimEnd(),
      rows: routeRows(steps).map(({ minute, words }) => `${clockAt(world, minute)} ${capital(words)}`),
    }
  );
}

/** The sheet of a scenario, built as `world`, with the route of its par where that is at hand; causes worst first, then by id. */
export function instructorSheet(
  scenario: Scenario,
  world: World,
  system: UnitSystem,
  proven: ProvenRoute | null = null,
): InstructorSheet {
  const from = perceivableFrom(world);
  const foundOf = (laid: Laid): readonly string[] => bySign(world, best(from(laid)));
  const laid = laidIn(world);
  const wrong = laid.filter(({ fault }) => !faultKind(fault.kind).benign);
  const fine = laid.filter(({ fault }) => faultKind(fault.kind).benign);
  const causes = wrong.map((each) => causeOf(world, each, foundOf(each), system));
  const inService = hazardsIn(world).filter(
    ({ causes: by, mechanism }) => by.length === 0 && mechanism !== 'barrier-loss',
  );
  return {
    scenario: scenario.id,
    title: scenario.title,
    grade: scenario.grade,
    teaches: scenario.teaches,
    call: `${capital(scenario.call.from)}: \u201c${scenario.call.said}\u201d`,
    job: scenario.job.words,
    causes: causes.sort((a, b) => rank(a.severity) - rank(b.severity) || (a.cause < b.cause ? -1 : 1)),
    lookAlikes: fine.map((each) => lookAlikeOf(world, each, foundOf(each))),
    besides: worstOfEach(inService, '').map((hazard) => hazardWords(world, hazard, system)),
    route: routeOf(world, proven),
    discussion: discussionOf(scenario, wrong, fine),
    caution,
  };
}
