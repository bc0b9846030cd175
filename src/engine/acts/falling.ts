/**
 * A conductor that comes off its tie. It does for certain when a repair takes it off and nothing else holds it; where a tie
 * is lost it may whenever somebody strikes or climbs that pole or works up there, by the World's own chance (an estimate). Judging
 * takes the fall for credible always (hazards/drop.ts); this is only what happens. Then the World changes: both spans end
 * where the double span rests below the tie (mechanics/looseRuns.ts), on the ground if that is lower, where they lead into
 * it (standards/groundContact.ts), and the circuit settles with that. Left out: what it catches on below, other spans
 * that go with it, a break.
 */
import { repairKinds } from '../catalogue/repairs.ts';
import { nextUniform } from '../math/random.ts';
import { restHeight } from '../mechanics/looseConductor.ts';
import { endsAt, hasFallen, type LooseRun, looseRuns, runWithout, tiesOf } from '../mechanics/looseRuns.ts';
import { liftAt, withEnd, withEnds } from '../mechanics/spanEnds.ts';
import { vergeOhms } from '../standards/groundContact.ts';
import { format } from '../units/formatQuantity.ts';
import { findPart } from '../world/edit.ts';
import type { Part, World } from '../world/types.ts';
import { event } from './kind.ts';
import { standHere } from './presence.ts';
import type { Act, WorldEvent } from './types.ts';

/** Chance that a loose conductor goes when its pole is struck, climbed or worked on. */
const chanceToFall = 0.25;

interface Happening {
  readonly world: World;
  readonly events: readonly WorldEvent[];
}

const still = (world: World): Happening => ({ world, events: [] });

/** Lets the conductor down to where it rests. */
function letDown(world: World, { tie, over, at }: LooseRun): Happening {
  const ends = endsAt(world, tie).filter((end) => !hasFallen(end));
  if (ends.length === 0) return still(world);
  const rest = restHeight(over.conductor, at);
  // Over a hollow its tie held it down: it stays where the longer span lifts it.
  if (rest >= tie.at[2]) return still(world);
  const height = Math.max(0, rest);
  const position = height > 0 ? 'low' : 'ground';
  const ohms = vergeOhms(world.site.wetness);
  const words =
    position === 'ground'
      ? 'The conductor comes off and falls to the ground.'
      : `The conductor comes off and hangs ${format(tie.at[2] - height, 'length', 'metric')} lower.`;
  return {
    world: withEnds(world, ends, (end) => withEnd(end, height, position, ohms)),
    events: [event('fell', tie.id, words)],
  };
}

/** The tie that a conductor is taken off for work on a part, where no arm carries it. */
const tieOf = (world: World, part: Part): Part | null =>
  tiesOf(world, part).find((tie) => endsAt(world, tie).some(({ part: span }) => !span.supported)) ?? null;

/** Pole that an act shakes; null when it shakes none. */
function shaken(world: World, act: Act): string | null {
  switch (act.act) {
    case 'sound':
    case 'prod':
      return act.pole;
    case 'aloft':
      return act.by === 'hooks' ? act.pole : null;
    case 'repair':
    case 'cover':
      return standHere(world)?.aloft?.pole ?? null;
    default:
      return null;
  }
}

/** What comes off its tie by the act, after the act's own change. */
export function fallBy(world: World, act: Act): Happening {
  const kind = act.act === 'repair' ? repairKinds.find(({ id }) => id === act.repair) : undefined;
  const part = act.act === 'repair' ? findPart(world, act.part) : null;
  if (part !== null && kind?.tie === 'on') return still(liftAt(world, part));
  if (part !== null && kind?.tie === 'off') {
    const tie = tieOf(world, part);
    const run = tie === null ? null : runWithout(world, tie);
    return run === null ? still(world) : letDown(world, run);
  }
  const pole = shaken(world, act);
  if (pole === null) return still(world);
  const loose = looseRuns(world).filter(
    ({ tie }) => tie.pole === pole && endsAt(world, tie).some((end) => !hasFallen(end)),
  );
  return loose.reduce<Happening>((sofar, run) => {
    const [drawn, chance] = nextUniform(sofar.world.chance);
    const drawnWorld = { ...sofar.world, chance };
    if (drawn >= chanceToFall) return { world: drawnWorld, events: sofar.events };
    const fell = letDown(drawnWorld, run);
    return { world: fell.world, events: [...sofar.events, ...fell.events] };
  }, still(world));
}
