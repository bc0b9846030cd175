/** Looking, asking and checking: how a trainee goes round a scene. Each part of it is a choice that a habit may make otherwise. */
import { distance } from '../math/vec3.ts';
import type { Aid } from '../senses/types.ts';
import type { Stand } from '../world/types.ts';
import { allFaultsOf, meaningsOf } from './trade.ts';
import type { Doing, Scene, SeenPart, Self, Told } from './types.ts';

/** How a habit surveys. */
export interface Survey {
  /** Which stands on the ground are gone to; the first one is where one stands. */
  readonly stands: (scene: Scene) => readonly Stand[];
  /** Which of the parts near a stand are looked at. */
  readonly sees: (part: SeenPart, stand: Stand) => boolean;
  /** What is called: what a look means, or in the end everything else that could be as well. */
  readonly calls: 'what-it-means' | 'everything';
  /** Ends the survey once something has been called. */
  readonly stopsAfterFirst: boolean;
  /** Share of looks that attention misses. */
  readonly lapse: number;
}

/** How sure one says to be of what one has seen well, and of what is called only in case. */
const sure = 0.9;
const justInCase = 0.5;
/** How near a pole a conductor's end still belongs to it, metres. */
const atPole = 4;

const here = (scene: Scene): string | null => scene.people.find(({ role }) => role === 'trainee')?.at ?? null;

const flat = ([x, y]: SeenPart['at']): SeenPart['at'] => [x, y, 0];

/** What belongs to a stand: all on its pole with the spans that end there, or all at the premises. */
const partsAt = (scene: Scene, stand: Stand): readonly SeenPart[] => {
  const pole = scene.parts.find(({ id }) => id === `${stand.near}.pole`);
  return scene.parts.filter((part) => {
    if (part.premises === stand.near || part.pole === stand.near) return true;
    if (pole === undefined || part.premises !== null || part.end === null) return false;
    return [part.at, part.end].some((end) => distance(flat(end), flat(pole.at)) <= atPole);
  });
};

/** How the trade's dictionary calls whatever that is: a part, a tool, somebody by role, the site; null if it is nothing. */
export const kindOf = ({ parts, tools, people }: Scene, id: string): string | null => {
  if (id === 'site') return id;
  const part = parts.find((each) => each.id === id);
  if (part !== undefined) return part.kind;
  const tool = tools.find((each) => each.id === id);
  if (tool !== undefined) return `tool:${tool.kind}`;
  const person = people.find((each) => each.id === id);
  return person === undefined ? null : `person:${person.role}`;
};

/** Looks round at the weather, the road and whoever is in sight. */
export function* lookRound(self: Self, isEnough: () => boolean = () => false): Doing {
  for (const { act } of self.offers().filter((offer) => offer.act.act === 'look')) {
    if (isEnough()) return;
    if (act.act !== 'look') continue;
    const { events }: Told = yield act;
    const kind = kindOf(self.scene(), act.part);
    if (kind !== null) yield* callFrom(act.part, kind, events.map(({ words }) => words).join(' '));
  }
}

/** Calls what the words mean; look-alikes are let be. */
export function* callFrom(on: string, kind: string, words: string): Doing {
  for (const { condition, benign } of meaningsOf(kind, words)) {
    if (!benign) yield { act: 'call-finding', on, condition, confidence: sure };
  }
}

/** Findings that one goes by; what was called only in case changes nothing of what one does. */
export const believed = ({ paper }: Scene): Scene['paper']['findings'] =>
  paper.findings.filter(({ confidence }) => confidence !== justInCase);

function* callRest(self: Self, on: string, kind: string): Doing {
  const called = new Set(self.scene().paper.findings.flatMap((each) => (each.on === on ? [each.condition] : [])));
  for (const condition of allFaultsOf(kind))
    if (!called.has(condition)) yield { act: 'call-finding', on, condition, confidence: justInCase };
}

/** Looks at a part with the glass, and by lamp where it is too dark for that. */
function* lookAtPart(part: SeenPart, first: Aid): Doing {
  let words = '';
  let { events }: Told = yield { act: 'look', part: part.id, aid: first };
  words += events.map((event) => event.words).join(' ');
  if (/too dark/.test(words)) {
    ({ events } = (yield { act: 'look', part: part.id, aid: 'lamp' }) as Told);
    words += events.map((event) => event.words).join(' ');
  }
  yield* callFrom(part.id, part.kind, words);
}

/** Asks everybody who answers from here, or only those here in person, everything that they answer. */
export function* askAll(self: Self, isInPerson = false): Doing {
  const here = new Set(self.scene().people.flatMap(({ id, at }) => (at === null ? [] : [id])));
  const offers = self.offers().filter(({ act }) => act.act === 'ask' && (!isInPerson || here.has(act.who)));
  for (const { act } of offers) {
    const known = self.scene().knowledge.tests.length;
    yield act;
    for (const { on, result } of self.scene().knowledge.tests.slice(known)) {
      const kind = kindOf(self.scene(), on);
      if (kind !== null) yield* callFrom(on, kind, result);
    }
  }
}

/** Goes round the stands, looks and calls. */
export function* surveyScene(self: Self, survey: Survey): Doing {
  const looked = new Map<string, string>();
  const isEnough = (): boolean => survey.stopsAfterFirst && self.scene().paper.findings.length > 0;
  for (const stand of survey.stands(self.scene())) {
    if (isEnough()) return;
    if (here(self.scene()) !== stand.id) yield { act: 'go', to: stand.id };
    yield* lookRound(self);
    const atPremises = self.scene().parts.some(({ premises }) => premises === stand.near);
    for (const part of partsAt(self.scene(), stand).filter((each) => survey.sees(each, stand))) {
      if (isEnough()) return;
      looked.set(part.id, part.kind);
      if (!self.dice.chance(survey.lapse)) yield* lookAtPart(part, atPremises ? 'eyes' : 'glass');
    }
    if (atPremises) yield* askAll(self, true);
  }
  if (survey.calls === 'everything') for (const [id, kind] of looked) yield* callRest(self, id, kind);
}

/** Reads, wipes, self-tests every tool in every way that it can be checked, and calls what shows. */
export function* checkTools(self: Self): Doing {
  for (const { act } of self.offers().filter((offer) => offer.act.act === 'check-tool')) {
    if (act.act !== 'check-tool') continue;
    const { events }: Told = yield act;
    const tool = self.scene().tools.find(({ id }) => id === act.tool);
    if (tool !== undefined) yield* callFrom(tool.id, `tool:${tool.kind}`, events.map(({ words }) => words).join(' '));
  }
}

/** Whether something was called on a pole or what hangs on it. */
export const isSuspect = (scene: Scene, pole: string | null): boolean =>
  believed(scene).some(({ on }) => {
    const part = scene.parts.find(({ id }) => id === on);
    if (part === undefined || part.premises !== null) return false;
    return part.pole === pole || part.pole === null;
  });

/** At the butt of each pole on which nothing was found from outside: look up, sound, prod. */
export function* soundPoles(self: Self): Doing {
  for (const stand of self.scene().stands.filter(({ id, aloft }) => aloft === null && id.endsWith('.butt'))) {
    const pole = stand.near;
    if (pole === null || isSuspect(self.scene(), pole)) continue;
    yield { act: 'go', to: stand.id };
    const part = self.scene().parts.find(({ id }) => id === `${pole}.pole`);
    if (part === undefined) continue;
    for (const way of ['sound', 'prod'] as const) {
      const told: Told = yield { act: way, pole };
      for (const { on, words } of told.events)
        yield* callFrom(on ?? part.id, kindOf(self.scene(), on ?? part.id) ?? part.kind, words);
      if (isSuspect(self.scene(), pole)) break;
    }
  }
}
