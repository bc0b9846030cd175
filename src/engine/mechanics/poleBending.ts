/**
 * Bending at the groundline of a pole of the World: pull of its conductors that does not balance, taken by a guy while that
 * holds; wind on pole and conductors; a climber. Tension of a span from sag and weight (standards/sag.ts), more in a wind
 * across it (standards/sagTension.ts, temperature as it was when the sag was taken), moments by
 * standards/poleLoad.ts, strength f C3/(32 pi2) times what decay leaves, and the two-thirds rule (standards/poles.ts).
 * Pull, wind and climber are added as if they bent one way. A guy takes the pull along its own direction, H at its height
 * over the cosine of its slope. A conductor that has parted does not pull; one that is held on a pin and leaves the scene
 * there runs on outside it and balances, and so do those beside it. The climber is 120 kg with tools, leaning 0.6 m out,
 * doubled for a sudden slip into the belt (estimates). Southern pine; left out: secondary and services, P-delta, gusts,
 * ice, foundation, the pole's own lean, decay above the groundline.
 */
import { componentKind } from '../catalogue/components.ts';
import { conductorNamed } from '../catalogue/conductorNames.ts';
import { faultKind } from '../catalogue/faults.ts';
import { distance, dot, scale, length as size, sub, type Vec3 } from '../math/vec3.ts';
import type { Conductor } from '../standards/conductors.ts';
import { climberMoment, conductorWind, momentOf, type PoleForce, windPressure } from '../standards/poleLoad.ts';
import { fibreStrength, momentCapacity, mustReplace } from '../standards/poles.ts';
import { gravity, tensionForSag, weightPerMetre } from '../standards/sag.ts';
import { conductorElasticity, resultantWeight, tensionAfter } from '../standards/sagTension.ts';
import type { Fraction, Kilograms, Metres, MetresPerSecond, NewtonMetres, Newtons } from '../units/quantities.ts';
import { partById } from '../world/edit.ts';
import type { Part, World } from '../world/types.ts';

/** Person, belt and tools. */
const CLIMBER: Kilograms = 120;
/** How far that hangs out from the pole's axis. */
const LEAN: Metres = 0.6;
/** A load put on at once deflects and strains twice as much as at rest (textbook). */
const SUDDEN = 2;
/** How far a conductor's end is from the pole that holds it at most. */
const HELD: Metres = 1.6;

/** A conductor that pulls at the pole: along the ground, and how high. */
export interface Pull {
  readonly part: string;
  readonly along: Vec3;
  readonly newtons: Newtons;
  readonly height: Metres;
  readonly span: Metres;
  readonly diameter: Metres;
}

/** What bends a pole and what it withstands. */
export interface PoleBending {
  readonly capacity: NewtonMetres;
  readonly left: Fraction;
  readonly unbalanced: NewtonMetres;
  readonly wind: NewtonMetres;
  readonly climber: NewtonMetres;
  readonly demand: NewtonMetres;
  /** Pull along the guy's strand; zero without one that holds. */
  readonly guyTension: Newtons;
  readonly rejected: boolean;
  readonly holds: boolean;
}

/** Strength left: the pole's own figure, less what faults take. */
export const strengthLeft = (part: Part): Fraction =>
  part.faults.reduce(
    (left, { kind }) => Math.min(left, faultKind(kind).mechanical?.strength ?? 1),
    part.values.strength ?? 1,
  );

const isParted = (part: Part): boolean =>
  part.faults.some(({ kind }) => faultKind(kind).mechanical?.breaks !== undefined);

/** A conductor's end at a pole. */
interface End {
  readonly part: Part;
  readonly net: string;
  readonly near: Vec3;
  /** Unit vector along the ground, away from the pole, and how far that goes. */
  readonly along: Vec3;
  readonly span: Metres;
  readonly pulls: boolean;
}

function endsAt(world: World, pole: string): readonly End[] {
  const { at } = partById(world, `${pole}.pole`);
  const flat = (place: Vec3): Metres => distance([place[0], place[1], 0], [at[0], at[1], 0]);
  return world.parts.flatMap((part) => {
    const { end, words, values, nets } = part;
    if (end === null || words.conductor === undefined || values.sagM === undefined) return [];
    const isFirst = flat(part.at) <= flat(end);
    const [near, far] = isFirst ? [part.at, end] : [end, part.at];
    if (flat(near) > HELD) return [];
    const away: Vec3 = [far[0] - near[0], far[1] - near[1], 0];
    const span = size(away);
    if (!(span > 0)) return [];
    const net = nets[isFirst ? 'a' : 'b'] ?? '';
    return [{ part, net, near, along: scale(away, 1 / span), span, pulls: !isParted(part) }];
  });
}

/** Cosine from which two directions count as one. */
const ALIKE = 0.99;

/** Ends whose conductor goes on beyond the pole, outside the scene, as it came. */
function runningOn(world: World, pole: string, ends: readonly End[]): ReadonlySet<End> {
  const through = new Set(
    world.parts
      .filter((part) => part.pole === pole && componentKind(part.kind).holds === 'through')
      .flatMap(({ nets }) => Object.values(nets)),
  );
  const leaves = ends.filter(({ net }) => through.has(net) && ends.filter((each) => each.net === net).length === 1);
  const beside = ends.filter(
    (end) =>
      leaves.some(({ along }) => dot(along, end.along) > ALIKE) &&
      !ends.some(({ net, along }) => net === end.net && dot(along, end.along) < -ALIKE) &&
      !isHeld(world, pole, end),
  );
  return new Set([...leaves, ...beside]);
}

/** Whether something at the pole is made for holding it, through or at its end; a neutral's spool is for both. */
const isHeld = (world: World, pole: string, { net }: End): boolean =>
  world.parts.some(
    (part) =>
      part.pole === pole && componentKind(part.kind).holds !== undefined && Object.values(part.nets).includes(net),
  );

/** Seven equal strands fill so much of their circle. */
const FILL = 7 / 9;

/** Tension of a span in a wind across it, from the sag at which it hangs at rest (standards/sagTension.ts). */
export function pullOf(conductor: Conductor, span: Metres, sag: Metres, wind: MetresPerSecond): Newtons {
  const weight = weightPerMetre(conductor.kilogramsPerMetre);
  const tension = tensionForSag(weight, span, sag);
  if (!(wind > 0)) return tension;
  const { modulus, expansion } = conductorElasticity[stranding(conductor)];
  const stiffness = (modulus * FILL * Math.PI * conductor.diameter * conductor.diameter) / 4;
  const windy = resultantWeight(weight, 0, windPressure(wind) * conductor.diameter);
  return tensionAfter(span, { weight, tension, celsius: 0 }, { weight: windy, celsius: 0 }, { stiffness, expansion });
}

const stranding = ({ id, name }: Conductor): keyof typeof conductorElasticity => {
  if (id.startsWith('copper')) return 'copper';
  return name.endsWith('26/7') ? 'acsr-26/7' : 'acsr-6/1';
};

/** Conductors whose pull the pole must bear unless something balances it, in a wind across them, by id of their parts. */
export function pullsAt(world: World, pole: string, wind: MetresPerSecond = 0): readonly Pull[] {
  const ends = endsAt(world, pole);
  const on = runningOn(world, pole, ends);
  return ends.flatMap((end) => {
    if (!end.pulls || on.has(end)) return [];
    const { part, near, along, span } = end;
    const conductor = conductorNamed(part.words.conductor ?? '');
    const newtons = pullOf(conductor, span, part.values.sagM ?? 0, wind);
    return [{ part: part.id, along, newtons, height: near[2], span, diameter: conductor.diameter }];
  });
}

/** A guy is lost by what is wrong with it or with what it ends on. */
const isLost = (world: World, pole: string): boolean =>
  world.parts.some(
    (part) => part.pole === pole && part.faults.some(({ kind }) => faultKind(kind).mechanical?.guy === 'lost'),
  );

interface Net {
  /** Moment that nothing takes from the pole, as a vector along the ground. */
  readonly moment: Vec3;
  readonly guyTension: Newtons;
}

function guyed(world: World, pole: string, pulls: readonly Pull[]): Net {
  const sum = pulls.reduce<Vec3>(
    ([x, y], { along, newtons, height }) => [x + along[0] * newtons * height, y + along[1] * newtons * height, 0],
    [0, 0, 0],
  );
  const guy = world.parts.find(({ id }) => id === `${pole}.guy`);
  if (guy === undefined || guy.end === null || isLost(world, pole)) return { moment: sum, guyTension: 0 };
  const out = sub([guy.end[0], guy.end[1], 0], [guy.at[0], guy.at[1], 0]);
  const run = size(out);
  const direction = scale(out, 1 / run);
  // It only pulls: against what bends the pole away from it.
  const taken = Math.max(0, -dot(sum, direction));
  const rise = guy.at[2] - guy.end[2];
  const slope = distance(guy.at, guy.end) / run;
  return {
    moment: sub(sum, scale(direction, -taken)),
    guyTension: rise > 0 ? (taken / rise) * slope : 0,
  };
}

function windMoment(part: Part, pulls: readonly Pull[], speed: MetresPerSecond): NewtonMetres {
  const pressure = windPressure(speed);
  const { heightM = 10.36, topRadiusM = 0.1, buttRadiusM = 0.14 } = part.values;
  // First moment of the trapezoid that the pole shows, as standards/poleLoad.ts.
  const own = (pressure * heightM * heightM * 2 * (buttRadiusM + 2 * topRadiusM)) / 6;
  const forces: PoleForce[] = pulls.map(({ diameter, span, height }) =>
    conductorWind(pressure, diameter, span / 2, height),
  );
  return own + momentOf(forces);
}

/** What bends the pole in a wind, with somebody on hooks or not. */
export function poleBending(
  world: World,
  pole: string,
  { wind = 0, climber = false }: { readonly wind?: MetresPerSecond; readonly climber?: boolean } = {},
): PoleBending {
  const part = partById(world, `${pole}.pole`);
  const pulls = pullsAt(world, pole, wind);
  const left = strengthLeft(part);
  const circumference = 2 * Math.PI * (part.values.buttRadiusM ?? 0.14);
  const capacity = left * momentCapacity(circumference, fibreStrength['southern pine']);
  const { moment, guyTension } = guyed(world, pole, pulls);
  const unbalanced = size(moment);
  const windy = windMoment(part, pulls, wind);
  const climbing = climber ? climberMoment(CLIMBER * gravity, LEAN, SUDDEN) : 0;
  const demand = unbalanced + windy + climbing;
  const rejected = mustReplace(left);
  return {
    capacity,
    left,
    unbalanced,
    wind: windy,
    climber: climbing,
    demand,
    guyTension,
    rejected,
    holds: !rejected && demand <= capacity,
  };
}
