/**
 * The proof of a scenario: what a drill of it can come to, by the same `act` as the drill. It is made of certificates,
 * each of which can be checked apart: routes that `replay` runs (a safe end, par, traps), a survey explored exhaustively
 * (survey.ts), arrangements of metal, truck and trainee explored as far as a bound lets (arrangements.ts), drills that
 * expose nobody explored as far as par (careful.ts), and an argument over all states about standing on the ground (stops.ts). The full product of parts, tools and places is not enumerated;
 * where something would need that, the claim says 'not finished' and how far it went.
 * Chance is an adversary: along par, wherever a leak may flash over, it does, and stopping must still be safe.
 */
import { act as plainAct } from '../acts/act.ts';
import { engineVersion } from '../acts/version.ts';
import { hazardsIn } from '../hazards/hazardsIn.ts';
import type { World } from '../world/types.ts';
import { arrangementsOf } from './arrangements.ts';
import { bitesInShort } from './bitesInShort.ts';
import { chanceClaim } from './chance.ts';
import { bitesClaims, controlClaims, findableClaims, informationClaim, isOutOfReach } from './claims.ts';
import { faultBite } from './faultBites.ts';
import { arrive, type Found, handedOver, restored, surveyed } from './findRoute.ts';
import { deadlyFaults } from './goals.ts';
import { plainMeasures } from './measures.ts';
import { withMeasures } from './needs.ts';
import { parOf, priced, routeClaims } from './par.ts';
import { Means, plainStep, type Step } from './peek.ts';
import { stopsClaim } from './stops.ts';
import { harmful, vantagesOf } from './survey.ts';
import { tell } from './tell.ts';
import { bitesIn, type Reached } from './traps.ts';
import type { Claim, Proof } from './types.ts';

export interface Progress {
  readonly stage: 'survey' | 'route' | 'par' | 'traps' | 'claims';
  readonly states: number;
  readonly transitions: number;
}

export interface ProveOptions {
  readonly seed: number;
  /** Seconds by the host's clock; the engine has none. */
  readonly now?: () => number;
  readonly tell?: (progress: Progress) => void;
  /** The engine's step; a test hands in an altered one. */
  readonly step?: Step;
  /** Acts looked at before searches give up. */
  readonly most?: number;
  /** Runs of the engine from which arrangements of the scene are explored; 0: none are. */
  readonly runs?: number;
  /** Routes walked in shortening par. */
  readonly tries?: number;
  /** No traps beyond a way into each hazard claimed (bitesInShort.ts); a scene with something that nobody can find is not looked at further. */
  readonly inShort?: boolean;
}

/** Acts looked at, and routes walked, unless the caller says otherwise. */
const MOST = 25_000;
const TRIES = 1500;
const RUNS = 3500;

/** Proves a World fresh from `build` with the seed. */
export function prove(start: World, options: ProveOptions): Proof {
  const { seed, now = () => 0, step = plainStep, most = MOST, tries = TRIES, inShort = false } = options;
  const { runs = inShort ? 0 : RUNS } = options;
  const began = now();
  const means = new Means(start, step, most);
  const say = (stage: Progress['stage']): void =>
    options.tell?.({ stage, states: means.states, transitions: means.transitions });
  say('survey');
  const laid = harmful(start);
  const hazards = hazardsIn(start);
  const behind = new Set(hazards.flatMap(({ causes }) => causes));
  const causes = laid.filter(({ fault }) => behind.has(fault.id));
  const arrived = arrive(means, start);
  const survey = arrived && surveyed(means, start);
  if (!arrived || !survey) return unarrived(start, seed);
  const scene: Reached = { world: arrived.stage.world, acts: arrived.stage.acts };
  const vantages = vantagesOf(scene.world, laid);
  const known = [...findableClaims(scene, causes, vantages), informationClaim(scene.world, causes, vantages)];
  // What nobody can find is wrong with the scene whatever route there is.
  if (inShort && known.some(({ outcome }) => outcome === 'fails')) return refused(start, seed, known);
  const deadly = deadlyFaults(hazards);
  say('route');
  const holdsSource = causes.some(({ on }) => start.parts.some(({ id, premises }) => id === on && premises !== null));
  const handOver = handedOver(means, survey.route, holdsSource);
  const found: Found = restored(means, survey.route, deadly, inShort);
  say('par');
  const arranged = runs > 0 ? arrangementsOf(means, start, deadly, runs) : null;
  const { par, ...looked } = parOf({ arranged, means, start, survey, found, handOver, deadly, tries });
  say('traps');
  const asked = hazards.filter(({ causes: of }) => of.length > 0);
  const bites = inShort
    ? bitesInShort(means, scene, asked, (hazard) => isOutOfReach(start, hazard))
    : bitesIn(means, scene, asked);
  const traps = tell(start, step, bites);
  say('claims');
  const best = withMeasures(means, survey.route.stage.world, plainMeasures(survey.route.stage.world));
  const worlds: readonly World[] = [
    best,
    ...worldsAlong(start, [par?.acts ?? [], handOver ? priced(handOver.stage).acts : []]),
  ];
  const claims: readonly Claim[] = [
    ...routeClaims(par, found, handOver),
    ...known,
    ...bitesClaims(start, laid, hazards, bites, (fault) => (inShort ? null : faultBite(means, scene, fault))),
    ...controlClaims(worlds, causes),
    stopsClaim(means, scene, worlds, arranged),
    chanceClaim(means, start, par?.acts ?? []),
  ];
  return {
    scenario: start.scenario,
    scenarioHash: start.scenarioHash,
    engine: engineVersion,
    seed,
    ok: claims.every(({ outcome }) => outcome !== 'fails'),
    par,
    claims,
    traps,
    states: means.states + survey.states + (arranged?.states ?? 0) + looked.states,
    transitions: means.transitions + survey.transitions + (arranged?.transitions ?? 0) + looked.transitions,
    seconds: now() - began,
  };
}

/** Every World along routes, the start included. */
function worldsAlong(start: World, routes: readonly (readonly Parameters<typeof plainAct>[1][])[]): readonly World[] {
  return [
    start,
    ...routes.flatMap((acts) => {
      let world = start;
      return acts.map((each) => {
        world = plainAct(world, each).world;
        return world;
      });
    }),
  ];
}

/** What is proved of a scene that is no good, by the claims that say why. */
const refused = (start: World, seed: number, claims: readonly Claim[]): Proof => ({
  scenario: start.scenario,
  scenarioHash: start.scenarioHash,
  engine: engineVersion,
  seed,
  ok: false,
  par: null,
  claims,
  traps: [],
  states: 0,
  transitions: 0,
  seconds: 0,
});

/** A scene that nobody can drive up to and look at unharmed. */
const unarrived = (start: World, seed: number): Proof =>
  refused(start, seed, [
    {
      id: 'safe-end',
      outcome: 'fails',
      words: 'The scene cannot be reached and looked over without exposing anybody.',
      acts: [],
    },
  ]);
