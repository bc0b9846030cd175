/** What a trainee does besides surveying: arriving, guarding, testing, briefing, reporting, working without a test. */
import { shutIn } from '../acts/talk.ts';
import type { Act } from '../acts/types.ts';
import { briefingTopics } from '../catalogue/controls.ts';
import { believed, checkTools, isSuspect, kindOf } from './survey.ts';
import { controlsAgainst } from './trade.ts';
import type { Doing, Scene, Self, Told } from './types.ts';

/** Takes the call and drives there. */
export function* arrive(at: 'clear' | 'under-line'): Doing {
  yield { act: 'acknowledge' };
  yield { act: 'park', at };
  yield { act: 'engine', on: false };
}

/** Chocks, cones, the vehicle that stops others where there is one, and the public kept out. */
export function* guard(): Doing {
  for (const what of ['chocks', 'cones', 'barrier', 'keep-out'] as const) yield { act: 'guard', with: what };
}

/** Has a dog that runs free shut in by whichever customer does it. */
export function* shutDogIn(self: Self): Doing {
  if (!believed(self.scene()).some(({ condition }) => condition === 'dog-loose')) return;
  for (const { id, role, premises } of self.scene().people) {
    const yard = self.scene().stands.find(({ near, aloft }) => aloft === null && near !== null && near === premises);
    if (role !== 'customer' || yard === undefined) continue;
    yield { act: 'go', to: yard.id };
    const { done }: Told = yield { act: 'tell', who: id, what: shutIn };
    if (done) return;
  }
}

/** Findings that are about a customer's premises. */
export const atCustomers = (scene: Scene): boolean =>
  believed(scene).some(({ on }) => scene.parts.find(({ id }) => id === on)?.premises != null);

const isAlive = ({ knowledge }: Scene): boolean => knowledge.readings.some(({ shows }) => shows === 'voltage');

/** Tells the dispatcher what was found, and that the place is dangerous. */
export function* report(self: Self): Doing {
  if (atCustomers(self.scene()) || isAlive(self.scene())) yield { act: 'tell', who: 'dispatcher', what: 'backfeed' };
  yield { act: 'tell', who: 'dispatcher', what: 'public-danger' };
}

/** Plans what holds each finding, and goes through the five subjects. */
export function* brief(self: Self): Doing {
  const scene = self.scene();
  for (const { id, on, condition } of believed(scene)) {
    const kind = kindOf(scene, on);
    const [control] = kind === null ? [] : controlsAgainst(kind, condition);
    yield { act: 'plan', finding: id, control: control ?? 'keep-clear', by: 'trainee' };
  }
  yield { act: 'plan', finding: null, control: 'hot-stick-only', by: 'trainee' };
  yield { act: 'plan', finding: null, control: 'hand-over', by: 'trainee' };
  yield { act: 'brief', topics: [...briefingTopics], rescue: true };
}

/** A stick and a detector that the checks have shown to be good: in date, self-test heard. */
export const goodTools = (scene: Scene): { readonly stick: string | null; readonly detector: string | null } => {
  const rejected = new Set(believed(scene).map(({ on }) => on));
  const good = (kind: string): string | null =>
    scene.tools.find((tool) => tool.kind === kind && !rejected.has(tool.id))?.id ?? null;
  return { stick: good('stick'), detector: good('detector') };
};

const nothingFound = (scene: Scene, pole: string | null): boolean => !isSuspect(scene, pole);

/** By stick from the butt of each sound pole: the devices there, each end, with the detector proved before and after. */
export function* testDevices(self: Self): Doing {
  const { stick, detector } = goodTools(self.scene());
  if (stick === null || detector === null) return;
  for (const stand of self.scene().stands.filter(({ id, aloft }) => aloft === null && id.endsWith('.butt'))) {
    if (!nothingFound(self.scene(), stand.near)) continue;
    yield { act: 'go', to: stand.id };
    const offers = self.offers();
    const devices = new Set(
      offers.flatMap(({ act }) => (act.act === 'operate' && act.stick === stick ? [act.part] : [])),
    );
    const tests = offers.flatMap(({ act }) =>
      act.act === 'test' && act.stick === stick && act.tool === detector && devices.has(act.point.split('/')[0] ?? '')
        ? [act]
        : [],
    );
    if (tests.length === 0) continue;
    yield { act: 'check-tool', tool: stick, check: 'wipe' };
    yield { act: 'check-tool', tool: detector, check: 'self-test' };
    for (const each of tests) yield each;
    yield { act: 'check-tool', tool: detector, check: 'self-test' };
  }
}

/** Everything that only costs time: every check again, every question again, long waits. */
export function* overControl(self: Self): Doing {
  for (let round = 0; round < 2; round++) {
    yield* checkTools(self);
    for (const { act } of self.offers().filter((offer) => offer.act.act === 'ask')) yield act;
    for (let i = 0; i < 4; i++) yield { act: 'wait', minutes: 15 };
  }
}

/** Where most hangs: the pole that somebody in a hurry takes for the job. */
const busiest = ({ parts, stands }: Scene): string | null => {
  const poles = [...new Set(stands.flatMap(({ aloft }) => (aloft === null ? [] : [aloft.pole])))];
  const load = (pole: string): number => parts.filter((part) => part.pole === pole).length;
  return poles.reduce<string | null>((best, pole) => (best === null || load(pole) > load(best) ? pole : best), null);
};

/** Hands on what hangs aloft, as if dead: up to the work, and the first mending that is on offer. False: no way up. */
export function* workAloft(self: Self, most: number): Doing<boolean> {
  const pole = busiest(self.scene());
  if (pole === null) return false;
  yield { act: 'go', to: `${pole}.butt` };
  const way = self.offers().find(({ act }) => act.act === 'aloft' && act.pole === pole && act.zone === 'work');
  if (way === undefined) return false;
  yield way.act;
  const mends = self.offers().filter(({ act }) => act.act === 'repair');
  for (const { act } of mends.slice(0, most)) if (self.scene().ended === null) yield act;
  if (self.scene().ended === null) yield { act: 'come-down' };
  return true;
}

/** At each butt: whatever can be worked by stick or hand there, in the order of the list. */
export function* workDevices(self: Self, most: number): Doing {
  for (const stand of self.scene().stands.filter(({ id, aloft }) => aloft === null && id.endsWith('.butt'))) {
    yield { act: 'go', to: stand.id };
    const done = new Set<string>();
    for (let i = 0; i < most && self.scene().ended === null; i++) {
      const next = self.offers().find(({ act }) => isDeviceWork(act) && !done.has(JSON.stringify(act)))?.act;
      if (next === undefined) break;
      done.add(JSON.stringify(next));
      yield next;
    }
  }
}

/** Bare or gloved hands on what can be got at from the ground, at each stand up to so many. */
export function* handsOnAll(self: Self, most: number): Doing {
  for (const stand of self.scene().stands.filter(({ aloft }) => aloft === null)) {
    if (self.scene().ended !== null) return;
    yield { act: 'go', to: stand.id };
    const touches = self.offers().filter(({ act }) => act.act === 'touch');
    for (const { act } of touches.slice(0, most)) {
      if (self.scene().ended !== null) return;
      yield act;
    }
  }
}

const isDeviceWork = (act: Act): boolean =>
  act.act === 'operate' || (act.act === 'repair' && act.repair === 'fit-link');
