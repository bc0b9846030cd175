/**
 * What stands against an act in a World: that it is impossible, that it would expose somebody, that something is owed
 * first (owed.ts). The same `act` in its parts, without causes and words, so that it can be asked often. What a reach meets
 * is what each mechanism meets, in the World before and, where the act changed metal, once more with that metal
 * (hazards/exposuresOf.ts): so each mechanism is learned by itself, as a function of one reach and one World, by what it
 * reads of both (learned/trie.ts), and what is done with other hands, or after other acts, is asked anew only of mechanisms
 * that look at it. A route found this way is always done again by `act` itself.
 */
import { carryOut, minutesOf, act as plainAct, refusalOf } from '../acts/act.ts';
import { passMinutes } from '../acts/clock.ts';
import { kindOf } from '../acts/kinds.ts';
import { perceive } from '../acts/perceive.ts';
import type { Act, ActResult } from '../acts/types.ts';
import { settle } from '../circuit/settle.ts';
import { eachAt, met, withMetalOf, withoutSwitching } from '../hazards/exposuresOf.ts';
import type { Meeting } from '../hazards/meeting.ts';
import type { Reach } from '../hazards/types.ts';
import type { Stand, World } from '../world/types.ts';
import { physicalKey } from './canonicalKey.ts';
import { Trie } from './learned/trie.ts';
import { owedBy, Service } from './owed.ts';
import { type Deed, firstStandFor, wayTo } from './places.ts';
import { ByWorld, Same } from './same.ts';

/** One reason why an act may not be done now. */
export interface Obstacle {
  readonly is: 'refused' | 'exposed' | 'owed';
  /** Hazard id, `<lacks>:<point>`, or the refusal's words. */
  readonly id: string;
  /** Preconditions that failed, for exposures. */
  readonly failed: readonly string[];
}

export interface Peeked {
  readonly world: World;
  readonly reach: readonly Reach[];
  readonly obstacles: readonly Obstacle[];
}

/** The engine's step, which a test may replace by an altered one. */
export interface Step {
  readonly act: (world: World, act: Act) => ActResult;
  readonly refuse: typeof refusalOf;
  readonly carry: typeof carryOut;
  readonly met: typeof met;
}

export const plainStep: Step = { act: plainAct, refuse: refusalOf, carry: carryOut, met };

const clampsOf = (act: Act): readonly string[] => (act.act === 'ground' ? act.points : []);

const exposure = ({ hazard, failed }: Pick<Meeting, 'hazard' | 'failed'>): Obstacle => ({
  is: 'exposed',
  id: hazard,
  failed,
});

/** One obstacle a hazard, sorted; what failed by any mechanism is kept (hazards/meeting.ts). */
function oneEach(found: readonly Obstacle[]): readonly Obstacle[] {
  if (found.length < 2) return found;
  const byId = new Map<string, Obstacle>();
  for (const each of found) {
    const known = byId.get(each.id);
    const failed = known && [...new Set([...known.failed, ...each.failed])].sort();
    byId.set(each.id, failed === undefined ? each : { ...each, failed });
  }
  return [...byId.values()].sort((a, b) => (a.id < b.id ? -1 : 1));
}

/** What every search is given: the engine's step, the line in service, and what was found out already. */
export class Means {
  readonly step: Step;
  readonly service: Service;
  /** Acts looked at. */
  transitions = 0;
  private readonly mechanisms = eachAt.map(() => new Trie<readonly Obstacle[]>());

  private readonly same: Same;
  private readonly peeks = new ByWorld<Peeked>();
  private readonly dones = new ByWorld<{ readonly done: Peeked | null }>();
  private readonly carries = new ByWorld<World>();
  private readonly stands = new ByWorld<{ readonly stand: Stand | null }>();
  private readonly refusals = new ByWorld<{ readonly reason: string | null }>();
  private readonly most: number;

  /** `most` bounds the acts looked at before searches give up. */
  constructor(start: World, step: Step = plainStep, most = 40_000) {
    this.step = step;
    this.most = most;
    this.service = new Service(start);
    this.same = new Same(start);
  }

  /** Whether as many acts have been looked at as may be. */
  get isSpent(): boolean {
    return this.transitions >= this.most;
  }

  private readonly places = new Set<string>();

  /** Different scenes in which an act was looked at, as far as exposures read them. */
  get states(): number {
    return this.places.size;
  }

  private exposed(passed: World, settled: World, reach: readonly Reach[]): readonly Obstacle[] {
    if (reach.length === 0) return [];
    this.places.add(physicalKey(passed));
    return reach.flatMap((each) => this.exposedBy(passed, settled, each));
  }

  private exposedBy(passed: World, settled: World, reach: Reach): readonly Obstacle[] {
    const { step } = this;
    if (step.met !== met) return step.met(reach, passed, settled).map(exposure);
    const first = this.metIn(passed, reach);
    const changed = withMetalOf(passed, settled);
    return changed === passed ? first : oneEach([...first, ...this.metIn(changed, withoutSwitching(reach))]);
  }

  /** What a reach meets in one World, each mechanism learned by itself: most of what is done is nothing to most of them. */
  private metIn(world: World, reach: Reach): readonly Obstacle[] {
    const tuple = this.same.tuple(reach, world);
    return oneEach(
      eachAt.flatMap((mechanism, i) =>
        this.same.learned(this.mechanisms[i] as Trie<readonly Obstacle[]>, tuple, world, (by, at) =>
          mechanism(by, at).map(exposure),
        ),
      ),
    );
  }

  /** Hazards that a reach meets in the World as it is. */
  meets(world: World, reach: Reach): readonly string[] {
    return this.exposedBy(world, world, reach).map(({ id }) => id);
  }

  /** Looks at one act; the World after it even where something stands against it, the same World where it is impossible. */
  peek(world: World, act: Act): Peeked {
    this.transitions++;
    const one = this.same.world(world);
    const peeked = this.peeks.get(one, this.same.text(act), () => this.look(one, act));
    // Whoever asks tells by the very same World that nothing happened.
    return peeked.world === one ? { ...peeked, world } : peeked;
  }

  private look(world: World, act: Act): Peeked {
    const refused = this.step.refuse(world, act);
    if (refused !== null) return { world, reach: [], obstacles: [{ is: 'refused', id: refused, failed: [] }] };
    const { passed, settled, reach } = this.step.carry(world, act);
    const exposed = this.exposed(passed, settled, reach);
    return { world: this.same.world(settled), reach, obstacles: [...exposed, ...this.owed(passed, act, reach)] };
  }

  /** One act as `act` does it, what is noticed unasked only where that is asked for; null where it is impossible, exposes somebody, or something is owed since that minute. */
  done(world: World, act: Act, testedSince: number, notices: boolean): Peeked | null {
    this.transitions++;
    const one = this.same.world(world);
    const name = `${testedSince} ${notices} ${this.same.text(act)}`;
    return this.dones.get(one, name, () => ({ done: this.walk(one, act, testedSince, notices) })).done;
  }

  private walk(world: World, act: Act, testedSince: number, notices: boolean): Peeked | null {
    if (this.step.refuse(world, act) !== null) return null;
    const { passed, settled, reach } = this.step.carry(world, act);
    if (this.exposed(passed, settled, reach).length > 0) return null;
    const readings = passed.knowledge.readings.filter(({ minute }) => minute >= testedSince);
    const asked =
      readings.length === passed.knowledge.readings.length
        ? passed
        : { ...passed, knowledge: { ...passed.knowledge, readings } };
    if (this.owed(asked, act, reach).length > 0) return null;
    return { world: this.same.world(notices ? perceive(world, settled).world : settled), reach, obstacles: [] };
  }

  /** What is owed before the act, hands going where its reach says. */
  owed(passed: World, act: Act, reach: readonly Reach[]): readonly Obstacle[] {
    if (act.act === 'test' || act.act === 'unground') return [];
    return reach.flatMap((each) =>
      owedBy(this.service, each, passed, clampsOf(act)).map(
        ({ point, lacks }): Obstacle => ({ is: 'owed', id: `${lacks}:${point}`, failed: [] }),
      ),
    );
  }

  /** Why the act is impossible by the engine itself. */
  refusal(world: World, act: Act): string | null {
    const one = this.same.world(world);
    return this.refusals.get(one, this.same.text(act), () => ({ reason: refusalOf(one, act) })).reason;
  }

  /** The first stand from which the act is possible as the World is now; null when there is none. */
  firstStand(world: World, act: Act, at?: string): Stand | null {
    const one = this.same.world(world);
    const name = at === undefined ? this.same.text(act) : `${at} ${this.same.text(act)}`;
    return this.stands.get(one, name, () => ({ stand: firstStandFor(one, act, at) })).stand;
  }

  /** The World after an act, unperceived; the same World where it is impossible. */
  carried(world: World, act: Act): World {
    if (this.refusal(world, act) !== null) return world;
    const one = this.same.world(world);
    return this.carries.get(one, this.same.text(act), () => this.same.world(carried(one, act)));
  }

  /** What stands against a chain of deeds, the ways between them included. */
  peekChain(start: World, deeds: readonly Deed[], upTo: 'first' | 'all' = 'all'): Peeked {
    let world = start;
    const obstacles: Obstacle[] = [];
    for (const { act, at } of deeds) {
      const way = wayTo(world, at);
      if (way === null) {
        obstacles.push({ is: 'refused', id: 'nobody gets there', failed: [] });
        continue;
      }
      for (const each of [...way, act]) {
        const peeked = this.peek(world, each);
        obstacles.push(...peeked.obstacles);
        world = peeked.world;
        if (upTo === 'first' && obstacles.length > 0) return { world, reach: [], obstacles };
      }
    }
    const seen = new Map(obstacles.map((each) => [`${each.is} ${each.id}`, each]));
    return { world, reach: [], obstacles: [...seen.values()] };
  }
}

/** The World after an act, unperceived. What changes no metal needs no circuit. */
function carried(world: World, act: Act): World {
  const passed = passMinutes(world, minutesOf(world, act)).world;
  const done = kindOf(act.act).apply(passed, act).world;
  return done.parts === world.parts && done.jumpers === world.jumpers ? done : settle(done).world;
}
