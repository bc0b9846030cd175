/**
 * The one repair that the careful one does alone: a fuse of a sound pole put back by stick, tested first, with nobody of the public
 * near, traffic held off, and no source of a customer's about. Everything else is left to those who come.
 */
import type { Act } from '../acts/types.ts';
import { atCustomers, goodTools } from './steps.ts';
import { believed, isSuspect } from './survey.ts';
import type { Doing, Scene, Self, Told } from './types.ts';

/** How a tube that has dropped out looks. */
const hanging = /hanging from the lower hinge/;
/** What on the site stops all work with a stick. */
const stops: readonly string[] = ['lightning', 'wind-too-strong', 'flooded', 'iced', 'wet'];

const isWorkable = (scene: Scene): boolean =>
  !atCustomers(scene) && !believed(scene).some(({ on, condition }) => on === 'site' && stops.includes(condition));

/** One of each kind that is worn and was not found wanting. */
function* dress(self: Self): Doing {
  const { tools } = self.scene();
  const rejected = new Set(believed(self.scene()).map(({ on }) => on));
  for (const kind of ['rubber-gloves', 'face-shield', 'hard-hat', 'vest']) {
    const good = tools.find((tool) => tool.kind === kind && !rejected.has(tool.id));
    if (good !== undefined) yield { act: 'wear', tool: good.id, on: true };
  }
}

const showsVoltage = ({ knowledge }: Scene, point: string): boolean =>
  knowledge.readings.filter((reading) => reading.point === point).at(-1)?.shows === 'voltage';

/** Ends of a device by detector and stick, the detector proved before and after; how many of them are alive. */
function* testEnds(self: Self, part: string, stick: string, detector: string): Doing<number> {
  yield { act: 'check-tool', tool: stick, check: 'wipe' };
  yield { act: 'check-tool', tool: detector, check: 'self-test' };
  const tests = self.offers().flatMap(({ act }) => {
    const isMine = act.act === 'test' && act.stick === stick && act.tool === detector;
    return isMine && act.point.startsWith(`${part}/`) ? [act] : [];
  });
  for (const each of tests) yield each;
  yield { act: 'check-tool', tool: detector, check: 'self-test' };
  return tests.filter(({ point }) => showsVoltage(self.scene(), point)).length;
}

/** Devices on a pole that a stick works from its butt, the tube seen hanging from one of the places beside it. */
function* droppedOut(self: Self, pole: string, stick: string): Doing<readonly string[]> {
  const beside = self
    .scene()
    .stands.filter(({ id, near, aloft }) => near === pole && aloft === null && !id.endsWith('.butt'));
  const cutouts = self.scene().parts.filter((part) => part.pole === pole && part.kind === 'cutout');
  const out = new Set<string>();
  for (const stand of cutouts.length > 0 ? beside : []) {
    yield { act: 'go', to: stand.id };
    for (const { id } of cutouts.filter((part) => !out.has(part.id))) {
      const { events }: Told = yield { act: 'look', part: id, aid: 'glass' };
      if (events.some(({ words }) => hanging.test(words))) out.add(id);
    }
  }
  if (out.size === 0) return [];
  yield { act: 'go', to: `${pole}.butt` };
  return self
    .offers()
    .flatMap(({ act }) =>
      act.act === 'operate' && act.stick === stick && act.operation === 'remove-tube' && out.has(act.part)
        ? [act.part]
        : [],
    );
}

/** Puts back what can be; tells whether anything was. */
export function* putFusesBack(self: Self): Doing<boolean> {
  const { stick, detector } = goodTools(self.scene());
  if (stick === null || detector === null || !isWorkable(self.scene())) return false;
  let done = false;
  const operate = (part: string, operation: string): Act => ({ act: 'operate', part, operation, stick });
  for (const { near } of self.scene().stands.filter(({ id, aloft }) => aloft === null && id.endsWith('.butt'))) {
    if (near === null || isSuspect(self.scene(), near)) continue;
    for (const part of yield* droppedOut(self, near, stick)) {
      yield* dress(self);
      // Alive on both sides it is fed from below as well: left as it is.
      if ((yield* testEnds(self, part, stick, detector)) > 1) continue;
      yield operate(part, 'remove-tube');
      yield { act: 'repair', part, repair: 'fit-link' };
      yield operate(part, 'hang-tube');
      yield { act: 'everyone-clear' };
      const closed: Told = yield operate(part, 'close');
      done ||= closed.done;
    }
  }
  return done;
}
