/** What the trainee could know of a cause at a moment: seen, heard, asked, tested or measured. */

import type { Replay } from '../acts/types.ts';
import { componentKind } from '../catalogue/components.ts';
import { faultKind } from '../catalogue/faults.ts';
import type { SignKind } from '../catalogue/types.ts';
import { solveCircuit } from '../circuit/solveCircuit.ts';
import { signsFrom } from '../senses/signsFrom.ts';
import { aids } from '../senses/types.ts';
import { faultsOf, findPart, withoutFault } from '../world/edit.ts';
import type { LaidFault, Part, PointId, World } from '../world/types.ts';

/** A laid fault or look-alike with the part or tool that carries it. */
export interface Laid {
  readonly on: string;
  readonly fault: LaidFault;
}

export const laidIn = (world: World): readonly Laid[] => faultsOf(world);

const signsOf = ({ fault }: Laid, sense: SignKind['sense']): readonly SignKind[] =>
  faultKind(fault.kind).signs.filter((sign) => sign.sense === sense);

const ofFault = (sign: string, { fault }: Laid): boolean => sign.startsWith(`${fault.id}/`);

/** Premises of the part that carries it, null for poles and tools. */
export const premisesOf = (world: World, { on }: Laid): string | null => findPart(world, on)?.premises ?? null;

/** Whether a part can give power by itself in some state of its kind. */
const givesPower = (part: Part): boolean => {
  const kind = componentKind(part.kind);
  const states = Object.entries(kind.states).flatMap(([name, words]) =>
    words.map((word) => ({ ...part.state, [name]: word })),
  );
  return [part.state, ...states].some((state) =>
    kind.branches({ ...part, state }).some(({ type }) => type === 'source'),
  );
};

/** Premises of a cause that have a source of their own there; null for all others. */
export const sourcePremisesOf = (world: World, laid: Laid): string | null => {
  const premises = premisesOf(world, laid);
  const own = world.parts.some((part) => part.premises === premises && givesPower(part));
  return premises !== null && own ? premises : null;
};

/** Whether a point was held alive from the premises. */
const isHeldFrom = (premises: string, before: World, point: PointId): boolean =>
  solveCircuit(before)
    .point(point)
    .sources.some((group) => group.startsWith(`${premises}.`));

/** Whether without the cause less than half of the volts would have been there to read. */
const standsByIt = ({ fault }: Laid, before: World, point: PointId): boolean =>
  solveCircuit(withoutFault(before, fault.id)).between(point, 'earth') <
  0.5 * solveCircuit(before).between(point, 'earth');

/** Whether a reading showed voltage that the cause's premises held there at that time, or that a cause on the line put there. */
const measured = (world: World, replay: Replay, laid: Laid): boolean => {
  const premises = premisesOf(world, laid);
  if (signsOf(laid, 'measure').length === 0) return false;
  return replay.steps.some(({ entry, before, after }) => {
    if (entry.act.act !== 'test' || after.clock.minute > world.clock.minute) return false;
    const reading = after.knowledge.readings.at(-1);
    if (reading === undefined || reading === before.knowledge.readings.at(-1) || reading.shows !== 'voltage')
      return false;
    return premises === null ? standsByIt(laid, before, reading.point) : isHeldFrom(premises, before, reading.point);
  });
};

/** Whether a sign of it had been perceived by then (world: the World at that moment of the replay). */
export const perceived = (world: World, replay: Replay, laid: Laid): boolean => {
  const { looks, heard, tests, asked } = world.knowledge;
  const premises = premisesOf(world, laid);
  return (
    looks.some(({ seen }) => seen.some((sign) => ofFault(sign, laid))) ||
    heard.some(({ sign }) => ofFault(sign, laid)) ||
    tests.some(({ sign }) => sign !== null && ofFault(sign, laid)) ||
    signsOf(laid, 'ask').some(({ by }) =>
      asked.some(({ who, about }) => about === by && world.people.find(({ id }) => id === who)?.premises === premises),
    ) ||
    measured(world, replay, laid)
  );
};

/** A place on the ground, an aid, and a sign that can be made out so. */
export interface Vantage {
  readonly stand: string;
  readonly aid: string;
  readonly sign: string;
}

/** Signs that are made out from the ground in a quiet World, by fault. */
const seenAndHeard = (world: World): ReadonlyMap<string, readonly Vantage[]> => {
  const quiet: World = { ...world, truck: { ...world.truck, place: 'clear', engine: false } };
  const found = new Map<string, Vantage[]>();
  for (const stand of quiet.stands.filter(({ aloft }) => aloft === null)) {
    for (const aid of aids) {
      for (const sign of signsFrom(quiet, stand.id, aid)) {
        if (!sign.perceived || (sign.sense === 'hear' && aid !== 'eyes')) continue;
        const vantage = { stand: stand.id, aid: sign.sense === 'hear' ? 'ears' : aid, sign: sign.words };
        found.set(sign.fault, [...(found.get(sign.fault) ?? []), vantage]);
      }
    }
  }
  return found;
};

/** Tells from where on the ground and with what a sign of a cause can be made out, in the World given. */
export const perceivableFrom = (world: World): ((laid: Laid) => readonly Vantage[]) => {
  const found = seenAndHeard(world);
  return (laid) => [
    ...(found.get(laid.fault.id) ?? []),
    ...faultKind(laid.fault.kind)
      .signs.filter(({ sense }) => sense !== 'see' && sense !== 'hear')
      .map((sign) => ({
        stand: sign.sense === 'ask' ? `${premisesOf(world, laid) ?? ''}.yard` : 'anywhere',
        aid: sign.by ?? sign.sense,
        sign: sign.words,
      })),
  ];
};

/** Whether a sign of it had been perceived, or could have been from some stand where the trainee had been up to that step. */
export const perceivableFromVisited = (replay: Replay, upTo: number, laid: Laid, world: World): boolean => {
  if (perceived(world, replay, laid)) return true;
  const visited = new Set(
    replay.steps
      .slice(0, upTo + 1)
      .flatMap(({ after }) => after.people.filter(({ role }) => role === 'trainee').map(({ at }) => at)),
  );
  return [...visited].some(
    (stand) =>
      stand !== null &&
      aids.some((aid) => signsFrom(world, stand, aid).some((sign) => sign.perceived && sign.fault === laid.fault.id)),
  );
};
