/** The claims about what is there: found, biting, controlled, knowable. Each says what was looked at, in one sentence. */
import { componentKind } from '../catalogue/components.ts';
import { controlKind } from '../catalogue/controls.ts';
import { faultKind } from '../catalogue/faults.ts';
import { toolKind } from '../catalogue/tools.ts';
import { branchesOf } from '../circuit/elementsOf.ts';
import { hazardsIn } from '../hazards/hazardsIn.ts';
import { precondition } from '../hazards/preconditions.ts';
import type { Hazard } from '../hazards/types.ts';
import { findPart, personById, pointsOf, toolById } from '../world/edit.ts';
import { calmedFrom } from '../world/faultEffects.ts';
import type { World } from '../world/types.ts';
import { bestOf } from './measures.ts';
import { liftOf, wayTo } from './places.ts';
import type { Laid, Vantage } from './survey.ts';
import { ordinary } from './toService.ts';
import type { Bite, Reached } from './traps.ts';
import type { Claim } from './types.ts';

/** A fault and where it lies, in the words of the screens. */
export function faultWords(world: World, { on, fault }: Laid): string {
  const carrier = findPart(world, on)?.name ?? toolById(world, on)?.name ?? personById(world, on)?.name ?? on;
  return `${faultKind(fault.kind).name} (${carrier})`;
}

/** Whether each fault behind a hazard shows a sign somewhere on the ground, and the shortest way there. */
export const findableClaims = (
  arrived: Reached,
  laid: readonly Laid[],
  vantages: readonly Vantage[],
): readonly Claim[] =>
  laid.map((each) => {
    const [first] = vantages
      .filter(({ shows }) => shows.includes(each.fault.id))
      .map(({ at, acts }) => [...(wayTo(arrived.world, at) ?? []), ...acts])
      .sort((a, b) => a.length - b.length);
    const words = faultWords(arrived.world, each);
    return first === undefined
      ? {
          id: `findable:${each.fault.id}`,
          outcome: 'fails',
          words: `No sign of it can be perceived from the ground with what the crew has: ${words}.`,
          acts: arrived.acts,
        }
      : {
          id: `findable:${each.fault.id}`,
          outcome: 'holds',
          words: `A sign of it can be perceived before hands go on anything: ${words}.`,
          acts: [...arrived.acts, ...first],
        };
  });

/** Mechanisms that distance from the ground keeps away. */
const aloftOnly = new Set<Hazard['mechanism']>(['approach', 'fall', 'drop']);

/** Whether it comes only of work aloft: by its mechanism, falling from the work on somebody, or by what two workers are for. */
const isAloftOnly = (world: World, { mechanism, part }: Hazard): boolean => {
  const role = personById(world, part)?.role;
  return (
    aloftOnly.has(mechanism) ||
    (mechanism === 'struck-by' && role !== undefined) ||
    (mechanism === 'barrier-loss' && role === 'second')
  );
};

/** Hazards that this crew cannot come to but at once from the ground: they come of work aloft, and nothing gets anybody up. */
export const isOutOfReach = (world: World, hazard: Hazard): boolean =>
  liftOf(world) === null && isAloftOnly(world, hazard);

/** Faults behind hazards with every device in service: what lies dormant while devices are open may bite once they are closed. */
function behindInService(world: World): ReadonlySet<string> {
  const parts = world.parts.map((part) => ({ ...part, state: { ...part.state, ...ordinary(part) } }));
  return new Set(hazardsIn({ ...world, parts }).flatMap(({ causes }) => causes));
}

/** Whether each hazard with a cause bites on some plausible act, and each serious fault is behind a hazard. */
export function bitesClaims(
  world: World,
  laid: readonly Laid[],
  hazards: readonly Hazard[],
  bites: ReadonlyMap<string, Bite>,
  biteOf: (fault: Laid) => Bite | null,
): readonly Claim[] {
  const ofHazards = hazards
    .filter(({ causes }) => causes.length > 0)
    .map((hazard): Claim => {
      const { id, words } = hazard;
      const bite = bites.get(id);
      if (bite !== undefined)
        return { id: `bites:${id}`, outcome: 'holds', words: `It bites: ${bite.label}.`, acts: bite.acts };
      return isOutOfReach(world, hazard)
        ? {
            id: `bites:${id}`,
            outcome: 'holds',
            words: 'It cannot bite this crew: nothing on the truck gets anybody up there.',
            acts: [],
          }
        : {
            id: `bites:${id}`,
            outcome: 'not finished',
            words: `No act that meets it was found at once or after one operation: ${words}`,
            acts: [],
          };
    });
  const behind = new Set(hazards.flatMap(({ causes }) => causes));
  const open = laid.filter(({ fault }) => !behind.has(fault.id) && faultKind(fault.kind).mechanisms.length > 0);
  const later = open.length === 0 ? new Set<string>() : behindInService(world);
  const ofFaults = open
    .filter(({ fault }) => !later.has(fault.id))
    .map((each): Claim => {
      const id = `bites:${each.fault.id}`;
      const bite = biteOf(each);
      if (bite !== null) {
        const words = `Behind no hazard as this scene stands, it bites all the same: ${bite.label}.`;
        return { id, outcome: 'holds', words, acts: bite.acts };
      }
      return {
        id,
        // What only lengthens or worsens another hazard is behind none by itself.
        outcome: faultKind(each.fault.kind).severity === 'fatal' ? 'fails' : 'not finished',
        words: `It is behind no hazard as this scene stands, nor with every device in service: ${faultWords(world, each)}.`,
        acts: [],
      };
    });
  return [...ofHazards, ...ofFaults];
}

/** The tool that a control goes by, where it names one. */
function toolFor(world: World, control: string, on: string): string | undefined {
  if (toolById(world, on) !== null) return on;
  const best =
    control === 'support-conductor'
      ? bestOf(world, ({ supports }) => supports === true)
      : control === 'rubber-gloves'
        ? bestOf(world, ({ wornOn }) => wornOn === 'hands')
        : bestOf(world, ({ barrier }) => barrier === 'stick');
  return best?.id;
}

/** Preconditions of a control that hold in none of the Worlds together; empty when it works in one of them. */
function lackingIn(worlds: readonly World[], control: string, { on }: Laid): readonly string[] {
  const { preconditions } = controlKind(control);
  let least: readonly string[] = preconditions;
  for (const world of worlds) {
    const part = findPart(world, on);
    const points = part === null ? [] : pointsOf(world).filter((id) => id.startsWith(`${on}/`));
    const tool = toolFor(world, control, on);
    for (const point of points.length > 0 ? points : [undefined]) {
      const about = {
        ...(part === null ? {} : { part: on }),
        ...(point === undefined ? {} : { point }),
        ...(tool === undefined ? {} : { tool }),
      };
      const lacking = preconditions.filter((id) => !precondition(world, id, about));
      if (lacking.length < least.length) least = lacking;
      if (least.length === 0) return [];
    }
  }
  return least;
}

/** The World in which whoever put the work off comes back: what lay on the site is over. */
const afterwards = (world: World | undefined, { on, fault }: Laid): readonly World[] =>
  world === undefined || on !== 'site' ? [] : [{ ...world, site: calmedFrom(world.site, fault) }];

/** Whether another tool of the kind can take its place. */
const hasAnother = (world: World, on: string): boolean => {
  const tool = toolById(world, on);
  if (tool === null) return false;
  const best = bestOf(world, (kind) => kind === toolKind(tool.kind));
  return best !== null && best.id !== on;
};

/** For each fault behind a hazard: which of the controls that the catalogue names work here, and why the others do not. */
export const controlClaims = (worlds: readonly World[], laid: readonly Laid[]): readonly Claim[] =>
  laid.map((each) => {
    const [first] = worlds;
    const tried = faultKind(each.fault.kind).controls.map((control) => ({
      control,
      lacking:
        control === 'reject-tool'
          ? first !== undefined && hasAnother(first, each.on)
            ? []
            : ['another tool of the kind']
          : lackingIn([...worlds, ...afterwards(first, each)], control, each),
    }));
    const works = tried.filter(({ lacking }) => lacking.length === 0).map(({ control }) => controlKind(control).name);
    const not = tried
      .filter(({ lacking }) => lacking.length > 0)
      .map(({ control, lacking }) => `${controlKind(control).name} (lacks ${lacking.join(', ')})`);
    const words = first === undefined ? each.fault.id : faultWords(first, each);
    return {
      id: `controls:${each.fault.id}`,
      outcome: works.length > 0 || tried.length === 0 ? 'holds' : 'fails',
      words: `${words}. Works here: ${works.join('; ') || 'none'}. Does not: ${not.join('; ') || 'none'}.`,
      acts: [],
    };
  });

/** Whether everything that a safe route rests on can be got to know. */
export function informationClaim(arrived: World, laid: readonly Laid[], vantages: readonly Vantage[]): Claim {
  const hidden = laid.filter(({ fault }) => !vantages.some(({ shows }) => shows.includes(fault.id)));
  const testers = arrived.tools.filter(({ kind }) => toolKind(kind).testsOf !== undefined);
  const sources = arrived.parts.filter(
    (part) => part.premises !== null && branchesOf(part).some(({ type }) => type === 'source'),
  );
  const secret = sources.filter(
    (part) =>
      componentKind(part.kind).features.length === 0 &&
      !arrived.people.some((p) => p.premises === part.premises && p.says.generator !== undefined),
  );
  const missing = [
    ...hidden.map((each) => faultWords(arrived, each)),
    ...secret.map(({ name }) => name),
    ...(testers.length === 0 ? ['whether anything is alive: there is no tester'] : []),
  ];
  return {
    id: 'information',
    outcome: missing.length === 0 ? 'holds' : 'fails',
    words:
      missing.length === 0
        ? 'Whatever a safe route rests on can be seen, heard, asked or tested.'
        : `It cannot be got to know: ${missing.join('; ')}.`,
    acts: [],
  };
}
