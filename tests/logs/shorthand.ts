/** Acts as one says them on paper; the good stick, detector and tester are meant unless others are named. */
import type { Act } from '../../src/engine/acts/types.ts';
import { briefingTopics } from '../../src/engine/catalogue/controls.ts';
import type { Aid } from '../../src/engine/senses/types.ts';

export const acknowledge: Act = { act: 'acknowledge' };
export const go = (to: string): Act => ({ act: 'go', to });
export const park = (at: 'clear' | 'under-line'): Act => ({ act: 'park', at });
export const ask = (who: string, ...topics: readonly string[]): Act[] =>
  topics.map((about) => ({ act: 'ask', who, about }));
export const tell = (who: string, what: string): Act => ({ act: 'tell', who, what });
export const look = (aid: Aid, ...parts: readonly string[]): Act[] => parts.map((part) => ({ act: 'look', part, aid }));
export const find = (on: string, condition: string, confidence?: number): Act => ({
  act: 'call-finding',
  on,
  condition,
  ...(confidence === undefined ? {} : { confidence }),
});
export const check = (tool: string, how: Extract<Act, { act: 'check-tool' }>['check']): Act => ({
  act: 'check-tool',
  tool,
  check: how,
});
export const wear = (...tools: readonly string[]): Act[] => tools.map((tool) => ({ act: 'wear', tool, on: true }));
export const guard = (...withs: readonly Extract<Act, { act: 'guard' }>['with'][]): Act[] =>
  withs.map((each) => ({ act: 'guard', with: each }));
export const primary = (point: string, tool = 'detector-1'): Act => ({ act: 'test', point, tool, stick: 'stick-1' });
export const secondary = (...points: readonly string[]): Act[] =>
  points.map((point) => ({ act: 'test', point, tool: 'tester-1', stick: null }));
export const byStick = (part: string, operation: string, stick = 'stick-1'): Act => ({
  act: 'operate',
  part,
  operation,
  stick,
});
export const byHand = (part: string, operation: string): Act => ({ act: 'operate', part, operation, stick: null });
export const owner = (part: string, operation: string): Act => ({ act: 'owner', part, operation });
export const tag = (part: string, on = true): Act => ({ act: 'tag', part, on });
export const plan = (finding: string | null, control: string, by = 'trainee'): Act => ({
  act: 'plan',
  finding,
  control,
  by,
});
export const ground = (tool: string, stick: string | null, ...points: readonly string[]): Act => ({
  act: 'ground',
  tool,
  points,
  stick,
});
export const unground = (jumper: string, stick: string | null = 'stick-1'): Act => ({ act: 'unground', jumper, stick });
export const repair = (part: string, how: string): Act => ({ act: 'repair', part, repair: how });
export const up = (pole: string, zone: 'below' | 'work', by: 'hooks' | 'bucket' = 'bucket'): Act => ({
  act: 'aloft',
  pole,
  by,
  zone,
});
export const down: Act = { act: 'come-down' };
export const hold = (part: string, on = true): Act => ({ act: 'support', part, on });
export const wait = (minutes: number): Act => ({ act: 'wait', minutes });
export const sound = (pole: string): Act => ({ act: 'sound', pole });
export const prod = (pole: string): Act => ({ act: 'prod', pole });
export const touch = (point: string): Act => ({ act: 'touch', point });
export const clearance = (step: 'request' | 'release', device: string): Act => ({ act: 'clearance', step, device });
export const handOver: Act = { act: 'hand-over' };
export const closeOut: Act = { act: 'close-out' };
export const everyoneClear: Act = { act: 'everyone-clear' };
export const countGrounds: Act = { act: 'count-grounds' };

/** Acknowledged, parked clear, engine off, wheels and place guarded, listened. */
export const arrive: readonly Act[] = [
  acknowledge,
  park('clear'),
  { act: 'engine', on: false },
  ...guard('chocks', 'cones', 'keep-out'),
  { act: 'listen' },
];

/** Everything that hangs on a tangent pole with a transformer, to be looked over from two sides. */
export const onTransformerPole = (pole: string): readonly string[] =>
  [
    'insulator',
    'tie',
    'pole',
    'clamp',
    'cutout',
    'arrester',
    'transformer',
    'tank-strap',
    'upper-lead',
    'ground-bond',
    'ground-lead',
  ].map((name) => `${pole}.${name}`);

/** Stick, detector, tester, gloves and shield gone over and put on, as the truck of most scenarios has them. */
export const tools: readonly Act[] = [
  check('stick-1', 'read-tag'),
  check('stick-1', 'wipe'),
  check('gloves-1', 'read-tag'),
  check('gloves-1', 'air-test'),
  check('tester-1', 'self-test'),
  check('detector-1', 'self-test'),
  ...wear('gloves-1', 'shield-1'),
];

/** All five topics gone over, rescue ready. */
export const brief: Act = { act: 'brief', topics: [...briefingTopics], rescue: true };

export const send = (who: string, to = 'away'): Act => ({ act: 'send', who, to });
export const assign = (who: string, task: 'watch' | 'flag' | null): Act => ({ act: 'assign', who, task });
