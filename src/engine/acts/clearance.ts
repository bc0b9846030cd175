/**
 * A clearance on the tap: asked for by radio, given when the device stands open and tagged, given back when all are
 * clear. The dispatcher reads back device and circuit (29 CFR 1910.269(m)(3): request, open, tag, grant, release).
 */
import { branchesOf } from '../circuit/elementsOf.ts';
import { findPart } from '../world/edit.ts';
import type { Part, World } from '../world/types.ts';
import { acknowledged } from './acknowledge.ts';
import { circuitSaid } from './dispatcher.ts';
import { type ActKind, event, outcome } from './kind.ts';
import { isolating } from './switching.ts';
import { holdTag } from './tag.ts';
import type { WorldEvent } from './types.ts';

/** Minutes that the dispatcher needs at least (estimate). */
export const dispatcherMinutes = 2;

const carries = (part: Part): boolean => branchesOf(part).some((branch) => branch.type === 'series');

/** Devices that a clearance can be asked for. */
export const isolatingDevices = (world: World): readonly Part[] => world.parts.filter(isolating);

/** What the dispatcher says to a request that is due, and whether it is given; null when none is due now. */
export function answerClearance(
  world: World,
): { readonly world: World; readonly events: readonly WorldEvent[] } | null {
  const { clearance } = world.orders;
  if (clearance?.state !== 'requested') return null;
  const waited = world.clock.minute - clearance.minute;
  const device = findPart(world, clearance.device);
  if (waited < dispatcherMinutes || !device) return null;
  if (carries(device) || !device.tags.includes(holdTag)) {
    const words = `The request for the ${device.name} is here. Report when it is open and tagged.`;
    return waited === dispatcherMinutes ? { world, events: [event('said', 'dispatcher', words)] } : null;
  }
  const words = `${device.name}, ${circuitSaid(world)}: open and tagged. The clearance is yours.`;
  return {
    world: {
      ...world,
      orders: { ...world.orders, clearance: { ...clearance, state: 'held', minute: world.clock.minute } },
    },
    events: [event('said', 'dispatcher', words)],
  };
}

export const clearance: ActKind<'clearance'> = {
  minutes: () => 1,
  refuse: (world, act) => {
    if (!world.orders.reported.includes(acknowledged)) return 'the call is not acknowledged yet';
    const device = findPart(world, act.device);
    if (!device || !isolating(device)) return 'that is no device to ask a clearance on';
    const now = world.orders.clearance;
    const open = now !== null && now.state !== 'released' ? now : null;
    if (act.step === 'request') return open ? 'a clearance is asked for or held already' : null;
    return open?.device === act.device ? null : 'there is no clearance to give back';
  },
  apply: (world, act) => {
    const { minute } = world.clock;
    const request = act.step === 'request';
    const name = findPart(world, act.device)?.name ?? act.device;
    return outcome(
      {
        ...world,
        orders: {
          ...world.orders,
          clearance: { device: act.device, state: request ? 'requested' : 'released', minute },
        },
      },
      [
        event(
          'said',
          'dispatcher',
          request
            ? `You ask for a clearance on the ${name}, ${world.given.supply.circuit}. ${circuitSaid(world)}, stand by.`
            : `Clearance on the ${name}, ${world.given.supply.circuit}, is released. The device is yours.`,
        ),
      ],
    );
  },
  offers: (world) =>
    isolatingDevices(world).flatMap((part) => [
      {
        act: { act: 'clearance', step: 'request', device: part.id },
        label: `Ask the dispatcher for a clearance on the ${part.name}`,
        by: 'radio',
        about: part.id,
      },
      {
        act: { act: 'clearance', step: 'release', device: part.id },
        label: `Give the clearance on the ${part.name} back`,
        by: 'radio',
        about: part.id,
      },
    ]),
};
