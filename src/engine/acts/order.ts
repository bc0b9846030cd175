/** Having the dispatcher work a device out of sight: asked by radio, read back, done when somebody has got there. */
import { findPart } from '../world/edit.ts';
import { acknowledged } from './acknowledge.ts';
import { circuitSaid, remoteOf, remoteParts } from './dispatcher.ts';
import { type ActKind, event, outcome } from './kind.ts';
import { operationOf, unfit } from './switching.ts';

/** Reclosing is told of, not ordered (talk.ts). */
const steps = ['open', 'close'] as const;

export const order: ActKind<'order'> = {
  minutes: () => 1,
  refuse: (world, act) => {
    if (!world.orders.reported.includes(acknowledged)) return 'the call is not acknowledged yet';
    const part = findPart(world, act.device);
    const operation = part && operationOf(part, act.step);
    if (!part || !operation || !remoteOf(part).includes(operation)) return 'the dispatcher works no such device';
    if (world.orders.switching.some((each) => each.part === part.id)) return 'an order for it is on its way';
    return unfit(part, operation);
  },
  apply: (world, act) => {
    const { upstream } = world.given.supply;
    const due = world.clock.minute + Math.max(1, upstream.travelMin);
    const entry = { part: act.device, operation: act.step, due };
    const words = `You ask to have ${upstream.name} ${act.step === 'open' ? 'opened' : 'closed'}. Read back: ${circuitSaid(world)}, ${upstream.name}, ${act.step}. ${upstream.travelMin} minutes to get there.`;
    return outcome({ ...world, orders: { ...world.orders, switching: [...world.orders.switching, entry] } }, [
      event('said', 'dispatcher', words),
    ]);
  },
  offers: (world) =>
    remoteParts(world).flatMap((part) =>
      steps.map((step) => ({
        act: { act: 'order', device: part.id, step },
        label: `Have the dispatcher ${step} ${world.given.supply.upstream.name} (${part.name})`,
        by: 'radio',
        about: part.id,
      })),
    ),
};
