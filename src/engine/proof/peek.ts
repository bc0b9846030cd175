/**
 * What stands against an act in a World: that it is impossible, that it would expose somebody, that something is owed
 * first (owed.ts). The same `act` in its parts, without causes and words, so that it can be asked often; exposures are
 * kept by what they read (canonicalKey.ts). A route found this way is always done again by `act` itself.
 */
import { carryOut, minutesOf, act as plainAct, refusalOf } from '../acts/act.ts';
import { passMinutes } from '../acts/clock.ts';
import { kindOf } from '../acts/kinds.ts';
import { perceive } from '../acts/perceive.ts';
import type { Act, ActResult } from '../acts/types.ts';
import { settle } from '../circuit/settle.ts';
import { met } from '../hazards/exposuresOf.ts';
import type { Reach } from '../hazards/types.ts';
import type { World } from '../world/types.ts';
import { physicalKey } from './canonicalKey.ts';
import { owedBy, Service } from './owed.ts';
import { type Deed, wayTo } from './places.ts';

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

/** What every search is given: the engine's step, the line in service, and what was found out already. */
export class Means {
  readonly step: Step;
  readonly service: Service;
  /** Acts looked at. */
  transitions = 0;
  private readonly exposures = new Map<string, readonly Obstacle[]>();

  private readonly most: number;

  /** `most` bounds the acts looked at before searches give up. */
  constructor(start: World, step: Step = plainStep, most = 40_000) {
    this.step = step;
    this.most = most;
    this.service = new Service(start);
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

  private exposed(passed: World, settled: World, act: Act, reach: readonly Reach[]): readonly Obstacle[] {
    if (reach.length === 0) return [];
    const was = physicalKey(passed);
    this.places.add(was);
    const key = `${JSON.stringify(act)}|${was}|${physicalKey(settled)}`;
    const known = this.exposures.get(key);
    if (known !== undefined) return known;
    const found = reach.flatMap((each) =>
      this.step
        .met(each, passed, settled)
        .map(({ hazard, failed }): Obstacle => ({ is: 'exposed', id: hazard, failed })),
    );
    this.exposures.set(key, found);
    return found;
  }

  /** Looks at one act; the World after it even where something stands against it, the same World where it is impossible. */
  peek(world: World, act: Act): Peeked {
    this.transitions++;
    const refused = this.step.refuse(world, act);
    if (refused !== null) return { world, reach: [], obstacles: [{ is: 'refused', id: refused, failed: [] }] };
    const { passed, settled, reach } = this.step.carry(world, act);
    const exposed = this.exposed(passed, settled, act, reach);
    return { world: settled, reach, obstacles: [...exposed, ...this.owed(passed, act, reach)] };
  }

  /** One act as `act` does it, what is noticed unasked only where that is asked for; null where it is impossible, exposes somebody, or something is owed since that minute. */
  done(world: World, act: Act, testedSince: number, notices: boolean): Peeked | null {
    this.transitions++;
    if (this.step.refuse(world, act) !== null) return null;
    const { passed, settled, reach } = this.step.carry(world, act);
    if (this.exposed(passed, settled, act, reach).length > 0) return null;
    const readings = passed.knowledge.readings.filter(({ minute }) => minute >= testedSince);
    const asked =
      readings.length === passed.knowledge.readings.length
        ? passed
        : { ...passed, knowledge: { ...passed.knowledge, readings } };
    if (this.owed(asked, act, reach).length > 0) return null;
    return { world: notices ? perceive(world, settled).world : settled, reach, obstacles: [] };
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

/** The World after an act, unperceived; the same World where it is impossible. What changes no metal needs no circuit. */
export function carried(world: World, act: Act): World {
  if (refusalOf(world, act) !== null) return world;
  const passed = passMinutes(world, minutesOf(world, act)).world;
  const done = kindOf(act.act).apply(passed, act).world;
  return done.parts === world.parts && done.jumpers === world.jumpers ? done : settle(done).world;
}
