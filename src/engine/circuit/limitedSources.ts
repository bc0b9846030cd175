/**
 * Sources that cannot give what a stiff one would. An ampere limit: the source's own impedance is raised in proportion, its
 * angle kept, until its own drive into the network is the limit (the way an inverter's virtual impedance works). With z its
 * impedance, E its emf and I its own current, the rest of the network is Zr = E/I - z, and k follows from
 * |k z + Zr| = |E|/limit. A watt limit: all emfs of the part are lowered together; the network is linear, so power goes by
 * their square. Amperes first, then watts. What other sources drive back through it is not limited. Left out: the
 * first cycle before a limit acts, unbalance that an inverter would correct.
 */
import { abs, type Complex, conj, div, mul, scale, sub } from '../math/complex.ts';
import { solveNetwork } from '../network/solveNetwork.ts';
import type { NetworkElement, NetworkSolution, SourceElement } from '../network/types.ts';
import type { Part, World } from '../world/types.ts';
import { CircuitDefect, defectOf } from './circuitDefect.ts';
import { branchesOf, elementId, partsById } from './elementsOf.ts';

interface Limit {
  readonly element: string;
  readonly part: string;
  readonly amperes: number | undefined;
  readonly watts: number | undefined;
}

const ROUNDS = 40;
const CLOSE = 1e-9;

const none: readonly Limit[] = [];
const limitsKept = new WeakMap<Part, readonly Limit[]>();

function limitsOn(part: Part): readonly Limit[] {
  const kept = limitsKept.get(part);
  if (kept !== undefined) return kept;
  const found = branchesOf(part).flatMap((branch) =>
    branch.type === 'source' && branch.limit !== undefined && abs(branch.emf) > 0
      ? [
          {
            element: elementId(part.id, branch.name),
            part: part.id,
            amperes: branch.limit.amperes,
            watts: branch.limit.watts,
          },
        ]
      : [],
  );
  const limits = found.length === 0 ? none : found;
  limitsKept.set(part, limits);
  return limits;
}

function limitsOf(world: World): readonly Limit[] {
  const limits: Limit[] = [];
  for (const part of partsById(world)) limits.push(...limitsOn(part));
  return limits;
}

function solved(elements: readonly NetworkElement[]): NetworkSolution {
  const solution = solveNetwork(elements);
  if (!solution.ok) throw defectOf(solution);
  return solution;
}

/** Current that the source drives by itself, positive toward `from`. */
const ownCurrent = (solution: NetworkSolution, { group, id }: SourceElement): Complex =>
  scale(solution.contribution(group).current(id), -1);

/** Factor on z that brings |E| / |k z + rest| down to the limit. */
function factorFor(z: Complex, rest: Complex, ohms: number): number {
  const a = abs(z) * abs(z);
  const b = mul(z, conj(rest)).re;
  const c = abs(rest) * abs(rest) - ohms * ohms;
  return (-b + Math.sqrt(Math.max(0, b * b - a * c))) / a;
}

type Sources = ReadonlyMap<string, SourceElement>;

const withSources = (elements: readonly NetworkElement[], changed: Sources): NetworkElement[] =>
  elements.map((element) => changed.get(element.id) ?? element);

function limitAmperes(elements: readonly NetworkElement[], limits: readonly Limit[]): readonly NetworkElement[] {
  const written = new Map(elements.flatMap((e) => (e.kind === 'source' ? [[e.id, e] as const] : [])));
  const factors = new Map<string, number>();
  let now: readonly NetworkElement[] = elements;
  for (let round = 0; round < ROUNDS; round++) {
    const solution = solved(now);
    const changed = new Map<string, SourceElement>();
    let worst = 0;
    for (const { element, amperes } of limits) {
      const source = written.get(element);
      if (source === undefined || amperes === undefined) continue;
      const k = factors.get(element) ?? 1;
      const z = scale(source.z, k);
      const current = ownCurrent(solution, source);
      if (abs(current) === 0) continue;
      const rest = sub(div(source.emf, current), z);
      const next = Math.max(1, factorFor(source.z, rest, abs(source.emf) / amperes));
      worst = Math.max(worst, Math.abs(next - k) / next);
      factors.set(element, next);
      if (next > 1) changed.set(element, { ...source, z: scale(source.z, next) });
    }
    if (worst <= CLOSE) return now;
    now = withSources(elements, changed);
  }
  throw new CircuitDefect(limits[0]?.element ?? 'sources', 'the limits of the sources are not met');
}

function limitWatts(elements: readonly NetworkElement[], limits: readonly Limit[]): readonly NetworkElement[] {
  if (limits.every(({ watts }) => watts === undefined)) return elements;
  const solution = solved(elements);
  const sources = new Map(elements.flatMap((e) => (e.kind === 'source' ? [[e.id, e] as const] : [])));
  const given = new Map<string, number>();
  for (const { element, part } of limits) {
    const source = sources.get(element);
    if (source === undefined) continue;
    const power = mul(source.emf, conj(ownCurrent(solution, source))).re;
    given.set(part, (given.get(part) ?? 0) + power);
  }
  const changed = new Map<string, SourceElement>();
  for (const { element, part, watts } of limits) {
    const source = sources.get(element);
    const power = given.get(part) ?? 0;
    if (source === undefined || watts === undefined || power <= watts) continue;
    changed.set(element, { ...source, emf: scale(source.emf, Math.sqrt(watts / power)) });
  }
  return withSources(elements, changed);
}

/** The elements with limited sources brought within their limits; the very same list if none is limited. */
export function limitSources(world: World, elements: readonly NetworkElement[]): readonly NetworkElement[] {
  const limits = limitsOf(world);
  return limits.length === 0 ? elements : limitWatts(limitAmperes(elements, limits), limits);
}
