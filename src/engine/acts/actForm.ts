/** The written form of an act: one strict object for each, nothing else let in. Texts and lists are bounded. */
import { z } from 'zod';
import { mechanisms } from '../catalogue/types.ts';
import { aids } from '../senses/types.ts';
import type { Act } from './types.ts';

const id = z.string().min(1).max(80);
const stick = id.nullable();
const on = z.boolean();

const form = <N extends Act['act'], S extends z.ZodRawShape>(act: N, shape: S, doc: string) =>
  z.strictObject({ act: z.literal(act), ...shape }).describe(doc);

/** Every act that a log may hold. */
export const actForm = z.discriminatedUnion('act', [
  form('acknowledge', {}, 'Acknowledge the call; the second worker sets out.'),
  form('go', { to: id }, 'Walk to a standing point.'),
  form('park', { at: z.enum(['clear', 'under-line']) }, 'Park the truck.'),
  form('engine', { on }, 'Engine of the truck on or off.'),
  form('look', { part: id, aid: z.enum(aids) }, 'Look at a part from the present stand.'),
  form('listen', {}, 'Stand still and listen.'),
  form('ask', { who: id, about: id }, 'Ask somebody about a topic.'),
  form('tell', { who: id, what: id }, 'Tell the dispatcher or a customer something.'),
  form(
    'guard',
    { with: z.enum(['chocks', 'cones', 'keep-out', 'barrier', 'truck-ground']) },
    'Guard truck, work or public.',
  ),
  form(
    'check-tool',
    { tool: id, check: z.enum(['read-tag', 'inspect', 'wipe', 'air-test', 'self-test']) },
    'Check a tool before trusting it.',
  ),
  form('wear', { tool: id, on, who: id.optional() }, 'Put protective equipment on or off, or have somebody do so.'),
  form('test', { point: id, tool: id, stick }, 'Test a point for voltage.'),
  form('sound', { pole: id }, 'Sound a pole with the hammer.'),
  form('prod', { pole: id }, 'Prod a pole at the ground line.'),
  form(
    'call-finding',
    { on: id, condition: id, confidence: z.number().min(0).max(1).optional() },
    'Call out a condition of a part, tool, person or the site.',
  ),
  form('withdraw-finding', { finding: id }, 'Strike a finding off the sheet.'),
  form(
    'plan',
    {
      finding: id.nullable(),
      control: id,
      by: id,
      harm: z.enum(mechanisms).optional().describe('What the finding can do, as the trainee says it.'),
    },
    'Plan a control on the briefing sheet.',
  ),
  form('withdraw-plan', { plan: id }, 'Strike a planned control.'),
  form('brief', { topics: z.array(id).max(5), rescue: z.boolean() }, 'Hold the job briefing.'),
  form('clearance', { step: z.enum(['request', 'release']), device: id }, 'Ask for a clearance or give it back.'),
  form('order', { device: id, step: z.enum(['open', 'close']) }, 'Have the dispatcher work a device out of sight.'),
  form('send', { who: id, to: id }, 'Send a worker to a standing point, or somebody of the public away.'),
  form(
    'assign',
    { who: id, task: z.enum(['watch', 'flag']).nullable() },
    'Have a worker watch only, or flag the traffic.',
  ),
  form('operate', { part: id, operation: id, stick }, 'Work a device by hand or stick.'),
  form('tag', { part: id, on }, 'Put a hold tag on a device or take it off.'),
  form('owner', { part: id, operation: id }, 'Have an owner work what is theirs.'),
  form('cover', { part: id, tool: id, on }, 'Lay a cover on a part or take it off.'),
  form('support', { part: id, on }, 'Hold a conductor by the auxiliary arm.'),
  form('ground', { tool: id, points: z.array(id).max(8), stick }, 'Put clamps on, in the order given.'),
  form('unground', { jumper: id, stick }, 'Take a set off, last clamp first.'),
  form('count-grounds', {}, 'Count grounds and shorts.'),
  form(
    'aloft',
    { pole: id, by: z.enum(['hooks', 'bucket']), zone: z.enum(['below', 'work']) },
    'Climb or go up in the bucket.',
  ),
  form('come-down', {}, 'Come down.'),
  form('repair', { part: id, repair: id }, 'Do a repair step.'),
  form('touch', { point: id }, 'Lay a hand on bare metal.'),
  form('everyone-clear', {}, 'Call everyone clear.'),
  form('wait', { minutes: z.int().min(1).max(60) }, 'Wait whole minutes.'),
  form('hand-over', {}, 'Stop and hand over.'),
  form('close-out', {}, 'Close the call out.'),
]);
